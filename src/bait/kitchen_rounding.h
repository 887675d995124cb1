#pragma once

#include "quantities/quantity.h"

/// Amounts as a kitchen scale or a measuring jug can show them. Rounding is to the nearest step, never to nothing:
/// what is there at all is at least one step. **Valid for**: amounts from 0. **Test**:
/// `tests/bait/kitchen_rounding_test.cpp`.
namespace baitwright {

/// Dry parts: 1 g below 50 g, 5 g below 2 kg, 10 g above.
Mass kitchen_mass(Mass mass);

/// What may be a dry part or a pinch: an additive below 5 g, else a dry part.
Mass kitchen_weighed(Mass mass);

/// Water: 1 g below 20 g, 5 g below 2 kg, 10 g above.
Mass kitchen_water(Mass water);

/// Additives: 0.1 g (ml) below 5, 0.5 below 20, 1 below 100, 5 above.
Mass kitchen_additive(Mass mass);
Volume kitchen_additive(Volume volume);

/// Times to wait: 1 min below 9.5 min, 5 min below 8 h, then hours; at least 1 min.
Time kitchen_time(Time time);

/// A time between put-ins, rounded down, so that as many as are told fit into the time they are told for: 5 s below
/// 5 min, 1 min below 10 min, 5 min above; below 5 s, 1 s.
Time kitchen_gap(Time time);
/// The same of a rhythm that somebody chose: 1 s below 5 min, 0.1 min above.
Time told_gap(Time time);

/// Time under water, which is short: 5 s below 57.5 s, 30 s below 4 min 45 s, 1 min below 20 min, then as above.
Time kitchen_soak_time(Time time);

}  // namespace baitwright
