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

/// The same in its two halves, for what changes the amounts of additives between them: scaled, each additive held
/// against its label; then the warnings of labels, and the prices (`usual` may be null).
MixAnswer scale_before_prices(const ResolvedMix& mix, const std::vector<Feel>& feels, const MixRequest& request);
void warn_and_price(const ResolvedMix& mix, const Currency* usual, MixAnswer& answer);

}  // namespace baitwright
