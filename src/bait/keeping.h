#pragma once

#include <optional>

#include "quantities/quantity.h"

namespace baitwright {

/// How long it stays good; nothing where not stated.
struct Keeping {
    std::optional<Time> dry, cold, frozen;
};

}  // namespace baitwright
