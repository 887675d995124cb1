#pragma once

#include "answers/shared/mix_request.h"
#include "bait/recipe.h"
#include "bait/resolved_mix.h"
#include "bait/shelf.h"

namespace baitwright {

/// The mix opened up, without what is left out for once and with what is added: its amounts are those in the whole
/// batch that the request asks for, of which the recipe makes the rest. A request that asks for no amount gets the
/// recipe as it is written, and the extras on top. Throws what `resolve` and `scale_mix` throw; UsageError
/// "not-in-mix", "nothing-left", "more-than-the-batch", "cook-first"; NotFound.
ResolvedMix resolve_for_once(const Recipe& recipe, const Shelf& shelf, const MixRequest& request);

/// What these names, as a person says them, are in full in the mix. Throws UsageError "not-in-mix".
std::vector<std::string> named_in_mix(const std::vector<std::string>& said, const ResolvedMix& mix);

}  // namespace baitwright
