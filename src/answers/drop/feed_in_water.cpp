#include "answers/drop/feed_in_water.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "bait/uptake.h"
#include "physics/normal_quantile.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr int classes = 9;
constexpr Time stands = 30.0 * minute;  // from the wetting until it goes in. Default, from memory
constexpr Length smallest = 0.1 * millimetre;
constexpr std::array<double, 4> of_fines{0.0132, 0.0228, 0.0395, 0.0684};  // mm: 10 x 9^(1/8, 3/8, 5/8, 7/8)

Speed settling_of(const Ingredient& in, Length size, Ratio excess, const StillWater& water) {
    if (!is_free_offering(in.kind)) return ferguson_church_speed(size, excess, water);
    return terminal_speed(size, (1 + excess) * water.density, water, pellet_sphericity);
}

/// What one solid's grains have in common in the water.
struct SolidInWater {
    double full;    ///< weight under water with its pores full, g per gram
    double weight;  ///< with the air that is in them
    double volume;  ///< of a gram of it times the water's density
    std::optional<Time> floats;
};

SolidInWater in_water(const Ingredient& in, const SolidNumbers& numbers, const WetGrain& grain, bool squeezed,
                      Temperature temperature, const StillWater& water) {
    // A slow drinker's pores have not filled by the time that the feed goes in.
    const double drunk = numbers.takes_water ? double(taken_after(in, stands, temperature)) : 1.0;
    const double pressed = squeezed && numbers.springy ? left_by_a_squeeze : 1.0;
    const double air = pressed * pore_air(numbers, drunk * grain.inside) * water.density;
    const double full = 1 - water.density / numbers.skeleton;
    SolidInWater solid{full, full - air, grain.swollen * water.density, std::nullopt};
    if (solid.weight < 0 && full > 0) solid.floats = pores_fill(in, 1 - full / air, temperature);
    return solid;
}

}  // namespace

Length volume_diameter(const Ingredient& in) {
    if (in.kind != IngredientKind::pellet && in.kind != IngredientKind::expander) return in.particle_size.value;
    return std::cbrt(1.5 * in.length.value / in.diameter.value) * in.diameter.value;
}

FeedInWater feed_in_water(const ResolvedMix& mix, const MixNumbers& numbers, const WettedMix& wetted, bool squeezed,
                          Temperature temperature, const StillWater& water) {
    const std::vector<WetGrain> wet = wet_grains(numbers, wetted);
    FeedInWater feed;
    for (std::size_t i = 0; i < mix.solids.size(); ++i) {
        const Ingredient& in = mix.solids[i].ingredient;
        const SolidInWater solid = in_water(in, numbers.solids[i], wet[i], squeezed, temperature, water);
        const double fines = in.fines.value, sigma = std::log(double(in.particle_spread.value));
        feed.weight = feed.weight + wet[i].mass * ((1 - fines) * solid.weight + fines * solid.full);
        for (const double size : of_fines)
            if (fines > 0)
                feed.fines.push_back({i, fines * wet[i].mass / static_cast<double>(of_fines.size()),
                                      ferguson_church_speed(size * millimetre, solid.full / solid.volume, water),
                                      solid.full});
        for (int k = 0; k < classes && fines < 1; ++k) {
            const double spread = std::exp(sigma * normal_quantile((k + 0.5) / classes));
            const Length size = wet[i].growth * std::max(smallest, spread * volume_diameter(in));
            GrainClass grains{i,
                              wet[i].mass * (1 - fines) / classes,
                              size,
                              settling_of(in, size, solid.weight / solid.volume, water),
                              solid.weight,
                              std::nullopt};
            if (solid.floats)
                grains.afloat = Afloat{*solid.floats, settling_of(in, size, solid.full / solid.volume, water)};
            feed.grains.push_back(grains);
        }
    }
    return feed;
}

}  // namespace baitwright
