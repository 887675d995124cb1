#pragma once

#include "answers/mix/mix_answer.h"
#include "answers/shared/mix_request.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// Scales a mix to a target and wets it to a feel: the plain equations, without ranges. Everything is worked out per
/// gram of dry mix and multiplied once, so there and back gives the same mix.
/// `feels` are the bands that name a wetness. Throws UsageError for a request that cannot be met: an unknown feel, a
/// state that the wetness does not allow, an amount that is not above zero or beyond 10 t, an ingredient on hand that
/// the mix does not hold, a mix of shares without a target.
MixAnswer scale_mix(const ResolvedMix& mix, const std::vector<Feel>& feels, const MixRequest& request);

}  // namespace baitwright
