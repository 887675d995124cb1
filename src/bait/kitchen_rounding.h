#pragma once

#include "quantities/quantity.h"

/// Amounts as a kitchen scale or a measuring jug can show them. Rounding is to the nearest step, never to nothing:
/// what is there at all is at least one step. **Valid for**: amounts from 0. **Test**: `tests/bait/kitchen_rounding_test.cpp`.
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

}  // namespace baitwright
