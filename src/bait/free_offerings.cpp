#include "bait/free_offerings.h"

#include <cmath>
#include <numbers>

namespace baitwright {

namespace {

Volume grain_volume(const Ingredient& i) {
    if (i.kind == IngredientKind::pellet || i.kind == IngredientKind::expander)
        return std::numbers::pi / 4 * i.diameter.value * i.diameter.value * i.length.value;
    const Length d = i.particle_size.value;
    return std::numbers::pi / 6 * d * d * d;
}

}  // namespace

double free_offerings_in(const Ingredient& ingredient, Mass mass) {
    if (!is_free_offering(ingredient.kind)) return 0;
    const double sigma = std::log(ingredient.particle_spread.value);
    return mass / (ingredient.envelope_density.value * grain_volume(ingredient)) * std::exp(4.5 * sigma * sigma);
}

}  // namespace baitwright
