#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "bait/dose.h"
#include "bait/soaked_batch.h"
#include "physics/water.h"
#include "quantities/mass_or_volume.h"
#include "quantities/units.h"

namespace baitwright {

/// One of the pellets of a soak: an amount of its own, or so many parts of the whole.
struct SoakItem {
    std::string of;
    std::optional<MassOrVolume> amount;
    double parts = 1;
};

/// Hook pellets by the bites to come, half as many again for those missed or too soft.
struct BitesPlanned {
    double per_hour;
    Time length;
};

/// As many grains as so much of another pellet has.
struct AsManyAs {
    MassOrVolume amount;
    std::string of;
};

/// How much all of it comes to; nothing where every item says its own.
using SoakTotal = std::variant<std::monostate, Mass, Volume, BitesPlanned, AsManyAs>;

/// A dye, a glaze or a flavour stirred into the water: by a rate, or an amount for the whole batch.
struct InTheWater {
    std::string of;
    std::variant<DoseRate, Mass, Volume> dose;
};

/// The hand pump that draws air out of the vessel in which expanders lie under water.
struct PumpSetup {
    std::optional<int> strokes;          ///< the fewest that sink nearly every bag, where not given
    Volume stroke = 100.0 * millilitre;  // common practice, no source
    Volume vessel = 500.0 * millilitre;
    Pressure air = standard_air_pressure;
};

/// Where the pellets go: how they lie in a cup, a ball, and on the bottom.
struct PortionsWanted {
    Volume cup = 250.0 * millilitre;
    Length ball = 50.0 * millimetre;
    Length carpet = 1.0 * metre;  ///< width of the round patch that one cupful covers
};

struct SoakRequest {
    std::vector<SoakItem> items;
    SoakTotal total;
    Ratio spare;  ///< more than asked
    Temperature water = Temperature::from_celsius(15);
    SoakMethod method = SoakMethod::covered;
    Ratio uptake = soaked_uptake;  ///< of the capacity
    std::optional<Time> soaked;    ///< in place of an uptake: they were under water this long
    std::vector<InTheWater> in_the_water;
    PumpSetup pump;
    PortionsWanted portions;
    std::optional<int> ready_at;  ///< when all is to be ready, in minutes since midnight
};

}  // namespace baitwright
