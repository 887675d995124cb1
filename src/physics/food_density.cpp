#include "physics/food_density.h"

#include <array>
#include <utility>

#include "quantities/fault.h"

namespace baitwright {

Density pore_free_density(const FoodShares& shares, Temperature temperature) {
    const double t = temperature.in_celsius();
    const std::array<std::pair<double, double>, 6> parts{{
        {shares.water, 997.18 + 0.0031439 * t - 0.0037574 * t * t},
        {shares.protein, 1329.9 - 0.5184 * t},
        {shares.fat, 925.59 - 0.41757 * t},
        {shares.carbohydrate, 1599.1 - 0.31046 * t},
        {shares.fibre, 1311.5 - 0.36589 * t},
        {shares.ash, 2423.8 - 0.28063 * t},
    }};
    double mass = 0, volume = 0;
    bool negative = false;
    for (const auto& [share, density] : parts) {
        negative = negative || share < 0;
        mass += share;
        volume += share / density;
    }
    if (negative || !(mass > 0))
        throw InputError("out-of-range", "the shares of a composition must not be below 0, and not all be 0",
                         "state water, protein, fat, carbohydrate and ash in percent");
    return Density::from_si(mass / volume);
}

}  // namespace baitwright
