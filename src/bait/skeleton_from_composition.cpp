#include "bait/skeleton_from_composition.h"

#include <algorithm>

#include "physics/food_density.h"

namespace baitwright {

std::optional<Density> skeleton_from_composition(const Composition& made_of, Ratio moisture) {
    constexpr double most_ash = 0.4, most = 1.1, least = 0.9;
    if (!made_of.protein.known() || !made_of.fat.known() || !made_of.ash.known()) return std::nullopt;
    const double protein = made_of.protein.value, fat = made_of.fat.value, ash = made_of.ash.value;
    const double carbohydrate = made_of.carbohydrate.value, beside = moisture + protein + fat + ash;
    if (ash > most_ash || beside + carbohydrate > most) return std::nullopt;
    if (made_of.carbohydrate.known() && beside + carbohydrate < least) return std::nullopt;
    if (std::min<double>({moisture, protein, fat, ash, made_of.fibre.value}) < 0) return std::nullopt;  // to be mended
    const double rest = std::max(0.0, 1 - beside), fibre = std::min<double>(rest, made_of.fibre.value);
    return pore_free_density({moisture, protein, fat, rest - fibre, fibre, ash}, Temperature::from_celsius(20));
}

}  // namespace baitwright
