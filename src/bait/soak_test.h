#pragma once

#include "bait/ingredient.h"
#include "quantities/temperature.h"

namespace baitwright {

/// A person's own soak: weighed dry, so long under water of that warmth, drained and weighed again.
struct SoakTest {
    Mass dry, drained;
    Time under_water;
    Temperature water;
};

/// The capacity that a batch soaked through (overnight) tells: (drained - dry)/dry, less the film on the grains.
/// Throws InputError "out-of-range" where it gained nothing, or more than ten times its mass.
Ratio capacity_of_test(Mass dry, Mass soaked_through);

/// The diffusivity at 15 degC that makes the pellet, with that capacity, gain what it gained. Throws InputError
/// "out-of-range" where it gained nothing or more than 99 % of the capacity, which tells no time.
Diffusivity diffusivity_of_test(const Ingredient& pellet, Ratio capacity, const SoakTest& test);

}  // namespace baitwright
