#pragma once

#include <vector>

#include "answers/blend/swap_answer.h"
#include "bait/shelf.h"

namespace baitwright {

/// What becomes of a mix with other solids: its water, its feel, how long its balls hold, its price, its cautions, and
/// the recipe as it may be saved. `solids` are the rest, in the order of the mix, and then what stands in for
/// `removed`.
SwapAnswer swapped_mix(const Shelf& shelf, const Recipe& recipe, const ResolvedMix& mix,
                       const std::vector<SolidPart>& removed, const std::vector<SolidPart>& solids);

}  // namespace baitwright
