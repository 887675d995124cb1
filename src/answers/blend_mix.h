#pragma once

#include <optional>

#include "answers/blend_answer.h"
#include "answers/linear_programme.h"
#include "bait/shelf.h"

namespace baitwright {

struct BlendRequest {
    std::optional<Mass> batch;  ///< the spec's own, or a kilogram, where not given
};

/// The cheapest mix of a spec. Throws what `resolve_blend` throws, and Error where the solver gives up.
BlendAnswer blend_mix(const Shelf& shelf, const BlendSpec& spec, const BlendRequest& request, LinearSolver& solver);

}  // namespace baitwright
