#pragma once

#include <string>
#include <vector>

#include "answers/shared/mix_request.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// A ball's volume, pi d^3 / 6. **Test**: rows BALL_COUNT.
Volume ball_volume(Length diameter);

/// The state a request means: asked for, or that of its vessels and balls, or the usual one at that wetness.
/// Throws UsageError "unfit-state" with the states that the wetness allows.
MixState wanted_state(const MixRequest& request, const std::string& feel, Ratio wetness);

/// Of pellets alone, which have no feel: pressed into balls and feeders, else poured. Throws UsageError "two-states".
MixState wanted_pellet_state(const MixRequest& request);

/// What the wetted mix comes to per gram dry: how a target in wet terms is turned to dry mass.
struct PerDry {
    Ratio wet_mass;
    SpecificVolume wet_volume;
    std::vector<Ratio> additives;  ///< grams of each: liquid parts first, then doses
};

struct MixAmount {
    Mass dry;
    std::string limited_by;  ///< of what is on hand, the ingredient that runs out first
};

/// The dry mass that meets the target for all the people with the spare. Throws UsageError: see `scale_mix`.
MixAmount wanted_amount(const ResolvedMix& mix, const MixRequest& request, const PerDry& per_dry);

}  // namespace baitwright
