#pragma once

#include <optional>
#include <string>

#include "quantities/date.h"
#include "quantities/mass_or_volume.h"
#include "quantities/money.h"
#include "quantities/quantity.h"

namespace baitwright {

/// A pack as a shop sells it: its size, and what it cost there on a day, if known.
struct Pack {
    MassOrVolume size;
    std::optional<Money> price;
    std::optional<Date> on;
    std::string shop;  ///< empty where not stated
};

}  // namespace baitwright
