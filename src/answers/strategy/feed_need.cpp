#include "answers/strategy/feed_need.h"

#include <algorithm>

#include "bait/free_offerings.h"

namespace baitwright {

void add_need(std::vector<IngredientNeed>& needs, const IngredientNeed& more) {
    const auto same = std::find_if(needs.begin(), needs.end(), [&](const IngredientNeed& need) {
        return need.ingredient.name == more.ingredient.name;
    });
    if (same == needs.end()) {
        needs.push_back(more);
    } else {
        same->mass += more.mass;
        same->soaked += more.soaked;
        same->kept += more.kept;
    }
}

void fill(FeedNeed& need, const FedPerDry& each, Mass dry) {
    const ResolvedMix& mix = need.fed.mix;
    need.dry = dry;
    need.wet_mass = each.wet_mass * dry;
    need.wet_volume = each.wet_volume * dry;
    need.water = each.water * dry;
    need.soak_water = each.soak_water * dry;
    for (const SolidPart& part : mix.solids) {
        const Mass mass = part.share * dry;
        add_need(need.ingredients, {part.ingredient, mass, part.prepare == Preparation::soaked ? mass : Mass{}});
        need.free_offerings += free_offerings_in(part.ingredient, mass);
    }
    for (std::size_t i = 0; i < each.additives.size(); ++i)
        add_need(need.ingredients, {additive_ingredient(mix, i), each.additives[i] * dry, {}});
}

}  // namespace baitwright
