#pragma once

#include "answers/mix/mix_answer.h"
#include "bait/resolved_mix.h"
#include "quantities/money.h"

namespace baitwright {

/// Prices every part and additive of a scaled mix, in one currency (`usual` where anything is priced in it; may be
/// null), so that whole pence sum to the whole; a missing price leaves its own and the total out, and is warned of.
void price_mix(const ResolvedMix& mix, const Currency* usual, MixAnswer& answer);

}  // namespace baitwright
