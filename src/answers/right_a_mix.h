#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "answers/warning.h"
#include "bait/shelf.h"
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

/// Where the tub stands and the least addition that puts it right once settled. One of the two additions is 0.
struct TubAnswer {
    std::string recipe, wanted_feel;
    Ratio wanted_wetness;
    Mass dry_mass, water_in;
    Ratio wetness_now, wetness_settled;
    std::string feel_now, feel_settled;
    Time settles_in;  ///< until 90 % of the absorption is taken up, from now
    Mass water_to_add;
    Mass dry_to_add;  ///< of the parts of the mix that take water
    bool all_parts_take_water = true;
    std::vector<Warning> warnings;
};

/// Throws UsageError (a dry mass or water that is not possible, an unknown feel) and what `resolve` throws.
TubAnswer right_a_mix(const Shelf& shelf, const Recipe& recipe, const TubRequest& request);

}  // namespace baitwright
