#pragma once

#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

/// What a food is made of, by mass. `carbohydrate` is without the fibre.
struct FoodShares {
    Ratio water, protein, fat, carbohydrate, fibre, ash;
};

/// The density of a food without any pores: 1/rho = sum x_i/rho_i, with the shares divided by their sum and, in kg/m3
/// at t degC: water 997.18 + 0.0031439 t - 0.0037574 t^2, protein 1329.9 - 0.5184 t, fat 925.59 - 0.41757 t,
/// carbohydrate 1599.1 - 0.31046 t, fibre 1311.5 - 0.36589 t, ash 2423.8 - 0.28063 t.
/// **Source**: Choi & Okos 1986, in Food Engineering and Process Applications 1 (coefficients as quoted in public
/// code).
/// **Valid for**: -40 to 150 degC, no ice; food, so not salts and minerals (ash to 40 %). Oil, syrup and paste within
/// 1 %, grain 2 to 4 % too light (bound water is denser than free). Throws InputError "out-of-range" for a share below
/// 0 or none above it. **Test**: rows FOOD_DENSITY, PARTICLE_DENSITY, SUCROSE_DENSITY.
Density pore_free_density(const FoodShares& shares, Temperature temperature);

}  // namespace baitwright
