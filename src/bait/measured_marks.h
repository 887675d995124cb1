#pragma once

#include <optional>

#include "bait/ingredient.h"
#include "bait/wetness.h"

namespace baitwright {

/// A bag found damper or drier than the marks were stated for takes less or more water: the marks at that moisture, of
/// what takes water. Throws UsageError for a moisture outside 0 to 99 %, and for a bag so damp that it takes none.
std::optional<WaterMarks> marks_in_bag(const Ingredient& ingredient, Ratio moisture);

/// Throws UsageError where an absorption that was measured is not below the slump that stands in the library: then that
/// is wrong too.
void check_absorption_measured(const Ingredient& ingredient, Ratio absorption);

}  // namespace baitwright
