#include "bait/pellets_alone.h"

#include <algorithm>

namespace baitwright {

bool is_pellets_alone(const ResolvedMix& mix) {
    return !mix.solids.empty() && std::all_of(mix.solids.begin(), mix.solids.end(), [](const SolidPart& part) {
        return part.ingredient.kind == IngredientKind::pellet;
    });
}

bool is_soaked_alone(const ResolvedMix& mix) {
    return is_pellets_alone(mix) && std::all_of(mix.solids.begin(), mix.solids.end(), [](const SolidPart& part) {
               return part.prepare == Preparation::soaked;
           });
}

void soak_pellets_alone(ResolvedMix& mix) {
    if (!is_pellets_alone(mix)) return;
    for (SolidPart& part : mix.solids) part.prepare = Preparation::soaked;
}

Ratio wetness_of_pellets(MixState state) {
    constexpr double pressed_together = 1.2;
    return state == MixState::squeezed ? pressed_together : 0.0;
}

}  // namespace baitwright
