#pragma once

#include "quantities/quantity.h"

namespace baitwright {

/// What rounding may move a moment by: 60 put-ins of 5 min end at 5 h, and not a hair before.
inline constexpr Time hair = Time::from_si(1e-6);

}  // namespace baitwright
