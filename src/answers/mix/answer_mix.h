#pragma once

#include "answers/mix/mix_answer.h"
#include "answers/shared/mix_request.h"
#include "bait/shelf.h"

namespace baitwright {

/// The main job: a recipe opened up on the shelf, scaled, wetted, priced, with its range and its cautions.
/// Throws what `resolve` and `scale_mix` throw.
MixAnswer answer_mix(const Shelf& shelf, const Recipe& recipe, const MixRequest& request);

}  // namespace baitwright
