#include "bait/weighed_parts.h"

#include <algorithm>

#include "bait/felt_wetness.h"
#include "bait/wetted_mix.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

void read_feel(LoggedMix& logged, const std::vector<Feel>& feels) {
    if (feels.empty()) return;
    const Feel* feel = find_feel(feels, logged.feel);
    if (!logged.wetness && feel) logged.wetness = feel->aim;
    if (!logged.wetness || logged.within > 0) return;
    logged.within = reading_spread(feels, feel ? *feel : feel_of(feels, *logged.wetness));
}

void weigh_parts(LoggedMix& logged, const ResolvedMix& mix, const BagMoistures& moistures) {
    if (!logged.dry || !logged.water || !logged.parts.empty()) return;
    for (const SolidPart& part : mix.solids) {
        if (!takes_water(part.ingredient.kind) || part.prepare == Preparation::soaked) continue;
        WeighedPart weighed{part.ingredient.name, part.share * *logged.dry};
        const auto told = std::find_if(moistures.begin(), moistures.end(), [&](const auto& bag) {
            return folded_name(bag.first) == folded_name(weighed.of);
        });
        if (told != moistures.end()) weighed.moisture = told->second;
        logged.parts.push_back(std::move(weighed));
    }
    const Ratio poured = *logged.water / *logged.dry;
    // Wetted to nothing, with so much poured already: what is present beside it is the rest's.
    const WettedMix wetted = wet(numbers_of(mix), 0.0, poured);
    logged.wetting = std::max(0.0, wetted.wetting_present - poured) * *logged.dry;
}

}  // namespace baitwright
