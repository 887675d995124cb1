#pragma once

#include <vector>

#include "answers/shared/warning.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// What is odd about a mix that is not wrong: it would float when soft in a cup, over half is fines, a dose beyond the
/// label or far beyond the usual, liquids alone wetter than its feel, a ball feel for a mix that breaks up, seeds that
/// must be cooked first, hook pellets in the tub, a part too small to weigh. `feels` must not be empty.
std::vector<Warning> oddities_of(const ResolvedMix& mix, const std::vector<Feel>& feels);

}  // namespace baitwright
