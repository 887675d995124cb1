#pragma once

#include <optional>

#include "quantities/money.h"
#include "quantities/quantity.h"

namespace baitwright {

/// A question to `blend_mix`.
struct BlendRequest {
    std::optional<Mass> batch;                 ///< the spec's own, or a kilogram, where not given
    const Currency* usual_currency = nullptr;  ///< priced in it where any candidate is
};

}  // namespace baitwright
