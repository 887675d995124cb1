#include "answers/drop/feed_in_water.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "physics/normal_quantile.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr int classes = 9;
constexpr Length smallest = 0.1 * millimetre;
constexpr Length of_fines = 0.06 * millimetre;

Speed settling_of(const Ingredient& in, Length size, Ratio excess, const StillWater& water) {
    if (!is_free_offering(in.kind)) return ferguson_church_speed(size, excess, water);
    return terminal_speed(size, (1 + excess) * water.density, water, pellet_sphericity);
}

}  // namespace

Length volume_diameter(const Ingredient& in) {
    if (in.kind != IngredientKind::pellet && in.kind != IngredientKind::expander) return in.particle_size.value;
    return std::cbrt(1.5 * in.length.value / in.diameter.value) * in.diameter.value;
}

FeedInWater feed_in_water(const ResolvedMix& mix, const MixNumbers& numbers, const WettedMix& wetted,
                          const StillWater& water) {
    const std::vector<WetGrain> wet = wet_grains(numbers, wetted);
    FeedInWater feed;
    for (std::size_t i = 0; i < mix.solids.size(); ++i) {
        const Ingredient& in = mix.solids[i].ingredient;
        const double weight = 1 - water.density / numbers.solids[i].skeleton, fines = in.fines.value;
        const double excess = weight / (wet[i].swollen * water.density);
        const double sigma = std::log(double(in.particle_spread.value));
        feed.weight = feed.weight + wet[i].mass * weight;
        if (fines > 0)
            feed.fines.push_back({i, fines * wet[i].mass, ferguson_church_speed(of_fines, excess, water), weight});
        for (int k = 0; k < classes && fines < 1; ++k) {
            const double spread = std::exp(sigma * normal_quantile((k + 0.5) / classes));
            const Length size = wet[i].growth * std::max(smallest, spread * volume_diameter(in));
            feed.grains.push_back(
                {i, wet[i].mass * (1 - fines) / classes, size, settling_of(in, size, excess, water), weight});
        }
    }
    return feed;
}

}  // namespace baitwright
