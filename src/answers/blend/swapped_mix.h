#pragma once

#include <vector>

#include "answers/blend/swap_answer.h"
#include "bait/shelf.h"

namespace baitwright {

/// What becomes of a mix with other solids: its water, its feel, how long its balls hold, its price, its cautions, and
/// the recipe as it may be saved. `solids` are the rest, in the order of the mix, and then what stands in for
/// `removed`. Both mixes are priced in one currency: the `usual` one where anything in them is priced in it.
SwapAnswer swapped_mix(const Shelf& shelf, const Recipe& recipe, const ResolvedMix& mix,
                       const std::vector<SolidPart>& removed, const std::vector<SolidPart>& solids,
                       const Currency* usual = nullptr);

}  // namespace baitwright
