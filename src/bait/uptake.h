#pragma once

#include <optional>
#include <vector>

#include "bait/resolved_mix.h"
#include "bait/wetness.h"
#include "quantities/temperature.h"

/// How fast a mix drinks: ingredient i has taken f_i = F(0.183 t / t90_i(T)) of its A after t, with F the uptake of a
/// sphere (`sphere_uptake`) and t90 at 15 degC moved to T by Arrhenius with 35 kJ/mol.
/// **Source**: F as in Crank 1975; the activation energy is a default from memory (printed for grains: 5 to 60).
/// **Valid for**: 0 to 40 degC. **Test**: `tests/bait/uptake_test.cpp`.
namespace baitwright {

/// The parts of a mix that take water: how much of A each holds, and how fast.
class MixUptake {
public:
    MixUptake(const ResolvedMix& mix, Temperature water);

    /// A(t)/A: share of the mix's absorption taken up after t; 1 where nothing takes water.
    [[nodiscard]] Ratio share_taken(Time since_wetting) const;
    /// The time at which that share (below 1) is reached; 0 where nothing takes water.
    [[nodiscard]] Time time_to(Ratio share) const;

private:
    struct Drinker {
        double weight;  // of A, summing to 1
        Time t90;
    };
    std::vector<Drinker> drinkers_;
};

/// The share of what it takes that an ingredient has taken so long after it was wetted; 1 where it takes nothing.
Ratio taken_after(const Ingredient& in, Time since_wetting, Temperature water);

/// How long the pores of an ingredient's grains take to fill by that share (below 1) of what was empty, under water:
/// the same F and t90. Nothing where it has no uptake of its own (hook pellets: their air must be drawn).
std::optional<Time> pores_fill(const Ingredient& in, Ratio share, Temperature water);

/// The marks as they act after t: A(t) = A x share, B(t) = A(t) + B - A.
WaterMarks marks_after(const WaterMarks& settled, Ratio share_taken);

}  // namespace baitwright
