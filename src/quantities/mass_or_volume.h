#pragma once

#include <variant>

#include "quantities/quantity.h"

namespace baitwright {

/// An amount as people state it, weighed or measured.
using MassOrVolume = std::variant<Mass, Volume>;

}  // namespace baitwright
