#pragma once

#include <vector>

#include "answers/pellets/soak_request.h"
#include "bait/ingredient.h"

namespace baitwright {

/// The dry mass of each item of a soak. What has no amount of its own shares the total by its parts: of a mass by mass,
/// of a volume by scooped volume, of a count by count. `pellets` are the items' ingredients, `as_many` the one that
/// `AsManyAs` names. Throws UsageError: no amount, one told twice, out of range.
std::vector<Mass> soak_amounts(const SoakRequest& request, const std::vector<Ingredient>& pellets,
                               const Ingredient* as_many);

/// Half as many hook pellets again as bites, for those missed or too soft. **Source**: common practice, no source.
inline constexpr double pellets_per_bite = 1.5;

}  // namespace baitwright
