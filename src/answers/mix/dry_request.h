#pragma once

#include <optional>
#include <string>

#include "quantities/temperature.h"
#include "quantities/units.h"

namespace baitwright {

/// A tub of the wet mix that stands open.
struct DryRequest {
    Area face;   ///< of the tub, open to the air
    Time hours;  ///< how long it stands
    Mass dry_mass = 1.0 * kilogram;
    std::optional<std::string> feel;
    Temperature air = Temperature::from_celsius(18);
    Ratio humidity = 0.60;
    Speed wind = 2.0 * metre_per_second;
    bool covered = false, in_sun = false;
};

}  // namespace baitwright
