#pragma once

#include <cstdint>
#include <vector>

#include "answers/mix/mix_answer.h"
#include "answers/shared/mix_request.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// `scale_mix`; and where the request names several targets one batch for all of them: its dry mix weighed together and
/// wetted to the driest of their feels, then a share of it let down for each that is wetter. Each target takes what it
/// would take alone, doses by water and by wet mass too, and the batch is their sum.
/// Throws what `scale_mix` throws; UsageError "too-many" and "unfit-flag".
MixAnswer scale_batch(const ResolvedMix& mix, const std::vector<Feel>& feels, const MixRequest& request);

/// How sure each target's water, let-down and number are.
void doubt_targets(const ResolvedMix& mix, MixAnswer& answer, std::uint64_t seed);

}  // namespace baitwright
