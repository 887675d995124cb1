#pragma once

#include "answers/blend/blend_answer.h"
#include "answers/blend/blend_request.h"
#include "answers/blend/linear_programme.h"
#include "bait/shelf.h"

namespace baitwright {

/// The cheapest mix of a spec. Throws what `resolve_blend` throws, and Error where the solver gives up.
BlendAnswer blend_mix(const Shelf& shelf, const BlendSpec& spec, const BlendRequest& request, LinearSolver& solver);

}  // namespace baitwright
