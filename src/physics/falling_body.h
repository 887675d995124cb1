#pragma once

#include <optional>
#include <span>
#include <vector>

#include "physics/settling.h"
#include "physics/tow.h"
#include "quantities/quantity.h"

namespace baitwright {

/// A cupful or a ball that sinks as one: a rough sphere with air between its grains, which water replaces.
struct FallingBody {
    Volume volume;
    Mass mass;         ///< all that is in it, as it goes in
    Mass under_water;  ///< what it weighs there without its air: sum m (1 - rho_w/rho_s)
    Volume air;
    Time air_fades = Time::from_si(1);  ///< e-fold of the air's leaving. **Source**: default
    Ratio drag = 0.6;                   ///< of a rough sphere. **Source**: default, from memory
};

struct FallPoint {
    Time at;
    Length depth;
    Speed speed;
    Length drift;  ///< it is carried as fast as the water
};

/// How long it waits at the surface until it is heavier than the water: while rho_w air(t) outweighs it. **Valid for**:
/// something that weighs more than nothing without its air.
Time waits_afloat(const FallingBody& body, const StillWater& water);

/// From rest at the surface until it has fallen to the depth or for the time, whichever comes first:
///     d(M v)/dt = g (under_water - rho_w air(t)) - 1/2 Cd rho_w A v^2,  M = mass + rho_w (air(0) - air(t)) + 1/2 rho_w
///     volume, air(t) = air(0) exp(-t/air_fades);
/// while it is lighter than water it waits at the surface. Nothing where it would float for good.
/// **Source**: Newton's law with an added mass of half the water displaced (Lamb 1932, from memory); Boost.Odeint,
/// Dormand and Prince's method to 1e-11. **Test**: row FALL_FROM_REST, `tests/physics/falling_body_test.cpp`.
std::optional<FallPoint> fall_from_rest(const FallingBody& body, const StillWater& water, const Tow& tow,
                                        Length to_depth, Time for_time);

/// The same fall at several times, in their order, as if there were no bed; nothing where it would float for good.
std::vector<FallPoint> fall_from_rest(const FallingBody& body, const StillWater& water, const Tow& tow,
                                      std::span<const Time> times);

}  // namespace baitwright
