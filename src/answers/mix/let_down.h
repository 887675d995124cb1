#pragma once

#include <cstdint>
#include <vector>

#include "answers/shared/range.h"
#include "bait/resolved_mix.h"
#include "quantities/quantity.h"

namespace baitwright {

/// A share of a batch, so much of it dry, that is wetted to one wetness with the rest and then made wetter by itself.
struct WetterShare {
    Mass dry_mass;
    Ratio from, to;
};

/// How it is let down. Masses are 0 where the share is as wet as that already.
struct LetDownShare {
    Mass take;                    ///< of the wetted batch
    Mass water;                   ///< more
    std::vector<Mass> additives;  ///< more of each that goes by water or by wet mass, in the order of the mix
};

/// What the wetter feel takes less what the drier one took: with that it is what it would be wetted by itself.
/// **Test**: let down in steps, or wetted at once, it weighs the same.
LetDownShare let_down(const ResolvedMix& mix, const WetterShare& share);

/// The 5, 50 and 95 % points of that water, from the draws of `doubt_of`.
Range<Mass> let_down_range(const ResolvedMix& mix, const WetterShare& share, std::uint64_t seed);

}  // namespace baitwright
