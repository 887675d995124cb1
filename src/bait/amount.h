#pragma once

#include <variant>

#include "bait/ingredient.h"
#include "quantities/mass_or_volume.h"

namespace baitwright {

/// What a level measure of it weighs per volume: a liquid's density, a solid's loose density.
inline Density measured_density(const Ingredient& ingredient) {
    return ingredient.kind == IngredientKind::liquid ? ingredient.density.value : ingredient.loose_density.value;
}

/// The mass that an amount of the ingredient means.
inline Mass mass_of_amount(const MassOrVolume& amount, const Ingredient& ingredient) {
    if (const Mass* mass = std::get_if<Mass>(&amount)) return *mass;
    return std::get<Volume>(amount) * measured_density(ingredient);
}

/// Of an additive's mass, the share that is the solute and not water.
inline Ratio solute_share(const Ingredient& additive) {
    return additive.kind == IngredientKind::liquid ? 1 - additive.water.value : 1 - additive.moisture.value;
}

}  // namespace baitwright
