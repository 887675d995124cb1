#pragma once

#include "bait/ingredient.h"

namespace baitwright {

/// How many separate grains a mass is: n = m / (envelope density x volume of one) x exp(4.5 ln^2 sg), where one is a
/// cylinder (pellets) or a sphere (seeds, live and cooked feed) of the median size by mass.
/// **Source**: Hatch & Choate 1929, number from mass of a log-normal (from memory).
/// **Valid for**: completed pellets, expanders, seeds and particles; 0 for what is not eaten grain by grain.
/// **Test**: `tests/bait/free_offerings_test.cpp`.
double free_offerings_in(const Ingredient& ingredient, Mass mass);

/// What a hand covers on the bottom, 10 x 10 cm: grains are counted under it.
inline constexpr Area hand_patch = Area::from_si(0.01);

}  // namespace baitwright
