#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/pellets/soak_request.h"
#include "answers/shared/range.h"
#include "answers/shared/warning.h"

namespace baitwright {

/// A moment of a soak, counted from the first contact with water; shares of the capacity.
struct SoakPoint {
    Time at;
    Ratio mean, core, surface;
};

/// How many grains go where.
struct GrainsAnswer {
    double all = 0;      ///< in the whole batch
    double in_cup = 0;   ///< in one level cupful, soaked
    double in_ball = 0;  ///< in one squeezed ball, soaked
    double in_hand = 0;  ///< under one hand (10 x 10 cm) where a cupful covers the carpet evenly
};

/// What an additive stirred into the water comes to on one batch.
struct SteepedAdditive {
    std::string name;
    bool liquid = false;
    Mass mass;
    Volume volume;
    Ratio strength;                     ///< mass of it in the mass of the water with it
    Ratio in_pellet;                    ///< mass of it left in the soaked pellets, per their mass
    std::optional<Ratio> of_label_max;  ///< 1 is the label's most
};

/// What every batch has, soaked or pumped.
struct BatchAnswer : SoakedBatch {
    std::string name;
    Length diameter;
    Volume dry_volume;  ///< loose
    GrainsAnswer grains;
    std::vector<SteepedAdditive> additives;
    std::optional<Ratio> water_activity;  ///< in the pellets, where what is stirred in lowers it; an upper bound
    std::optional<Time> keeps_cold, keeps_frozen;
};

/// Pellets that soak: under water, drained, standing until they are even.
struct SoakedAnswer : BatchAnswer {
    Ratio uptake;                           ///< of the capacity, on average
    Range<Time> soak;                       ///< under water; 0 doubt where the person said how long
    std::optional<Range<Time>> right_soak;  ///< for the usual uptake, where the person said how long they were in it
    Range<Time> stand_ready;                ///< drained, until core and surface are within half of the mean
    Range<Time> stand_even;                 ///< and within a fifth
    Range<Ratio> uptake_range;              ///< what a soak of the middle time may come to
    Range<Mass> wet_range;
    SoakPoint drained, ready, even;  ///< the three moments, from the first contact with water
    std::vector<SoakPoint> curve;
};

enum class Buoyancy { floats, sinks_slowly, sinks };

/// A pump's work after so many strokes.
struct StrokeAnswer {
    int strokes;
    Pressure pressure;
    Ratio fill;       ///< of the open pores
    Density density;  ///< of a pellet
    Buoyancy buoyancy;
    Ratio sinking;  ///< share of bags that sink, from the spreads
};

/// Expanders under a pump.
struct PumpedAnswer : BatchAnswer {
    Volume stroke, vessel;
    int lots = 1;        ///< equal ones, pumped one after the other
    Volume free_volume;  ///< air with one lot in the vessel: above the water and in the open pores
    Pressure air, vapour;
    StrokeAnswer at;                      ///< after the strokes asked for, or advised
    std::optional<int> fewest;            ///< strokes at which the usual bag sinks
    std::optional<int> fewest_sure;       ///< at which 95 of 100 bags do
    std::vector<StrokeAnswer> by_stroke;  ///< 1, 2, ... until the pores are 99 % full
};

/// Something to do, before the moment at which all is ready.
struct SoakTask {
    enum class Kind { pour_on, drain, pump };
    Time before_ready;
    Kind kind;
    std::string name;
    Mass pour;
};

struct SoakAnswer {
    Temperature water;
    SoakMethod method = SoakMethod::covered;
    bool by_clock = false;              ///< the person said how long they were under water
    PortionsWanted portions;            ///< that the grains are counted in
    std::optional<BitesPlanned> bites;  ///< that the amount was reckoned from
    Ratio spare;
    std::optional<int> ready_at;  ///< minutes since midnight
    std::vector<SoakedAnswer> soaked;
    std::vector<PumpedAnswer> pumped;
    std::vector<SoakTask> timetable;  ///< the earliest first; one pair of hands, a minute apart
    std::vector<std::string> cautions;
    std::vector<Warning> warnings;
};

}  // namespace baitwright
