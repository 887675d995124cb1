#pragma once

#include <optional>
#include <string>
#include <variant>

#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

/// What is in the tub: so much of the dry mix, and the water told by the jug or by weighing the tub's content.
struct WaterPoured {
    Volume volume;
};
struct TubWeighs {
    Mass mass;
};

struct TubRequest {
    Mass dry_mass;
    std::variant<WaterPoured, TubWeighs> water;
    std::optional<Time> since;  ///< since the water went in; settled where not given
    std::optional<std::string> feel;
    Temperature water_temperature = Temperature::from_celsius(15);
};

}  // namespace baitwright
