#pragma once

#include <string>
#include <vector>

#include "bait/shelf.h"
#include "bait/strategy.h"

namespace baitwright {

/// The mixes that a strategy feeds, in the order of its feeds, by the names that its plan gives them. What it makes of
/// several things, such as a mix and casters, is no entry of the library: `together` has those of `names` that are
/// such.
struct MixesFed {
    std::vector<std::string> names;
    std::vector<Recipe> together;
};
MixesFed mixes_fed(const Strategy& strategy, const Shelf& shelf);

}  // namespace baitwright
