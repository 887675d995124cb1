#pragma once

#include <optional>

#include "quantities/quantity.h"

namespace baitwright {

/// A question to `blend_mix`.
struct BlendRequest {
    std::optional<Mass> batch;  ///< the spec's own, or a kilogram, where not given
};

}  // namespace baitwright
