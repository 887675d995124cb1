#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "answers/shared/mix_request.h"
#include "answers/shared/usual_seed.h"
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

/// One cup, feeder or ball, of which it is asked how many the tub makes.
using TubPortion = std::variant<Vessels, Balls>;

struct TubRequest {
    Mass dry_mass;
    std::variant<WaterPoured, TubWeighs> water;
    std::optional<Time> since;  ///< since the water went in; settled where not given
    std::optional<std::string> feel;
    Temperature water_temperature = Temperature::from_celsius(15);
    std::vector<TubPortion> portions;  ///< their counts are not looked at
    std::uint64_t seed = usual_seed;   ///< of the draws for the ranges
};

}  // namespace baitwright
