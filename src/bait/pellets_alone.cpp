#include "bait/pellets_alone.h"

#include <algorithm>

#include "bait/resolve_mix.h"
#include "bait/wetted_mix.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/worded.h"

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

ResolvedMix resolve_as_made(const Recipe& recipe, const Shelf& shelf) {
    ResolvedMix mix = resolve(recipe, shelf);
    soak_pellets_alone(mix);
    return mix;
}

void refuse_pellets_alone(const ResolvedMix& mix) {
    if (!is_pellets_alone(mix)) return;
    throw UsageError("soaked-alone",
                     in_quotes(mix.name) + " is pellets alone: they are soaked and drained, not wetted to a feel",
                     worded("how long, and what they come to: baitwright mix \"" + mix.name + "\" --dry-mass 1kg",
                            "how long, and what they come to, is in Mix"));
}

Ratio water_kept_soaked(const ResolvedMix& mix) {
    double kept = 0;
    for (const SolidNumbers& part : numbers_of(mix).solids) kept += part.share * (part.carried + part.film);
    return kept;
}

Ratio wetness_of_pellets(MixState state) {
    constexpr double pressed_together = 1.2;
    return state == MixState::squeezed ? pressed_together : 0.0;
}

}  // namespace baitwright
