#include "bait/soaked_batch.h"

#include <algorithm>
#include <array>

#include "quantities/units.h"

namespace baitwright {

SpecificVolume swollen_grain(Density envelope, Density skeleton, Ratio water_inside) {
    constexpr SpecificVolume water = 1.0 * millilitre_per_gram;  // within 0.2 % from 0 to 20 degC
    const SpecificVolume own_pores = 1.0 / envelope - 1.0 / skeleton;
    return 1.0 / envelope + std::max(SpecificVolume{}, water_inside * water - own_pores);
}

SoakedBatch soaked_batch(const Ingredient& pellet, Mass dry, Ratio inside, SoakMethod method) {
    constexpr double gaps_covered = 1.2;
    const Density loose = pellet.loose_density.value, envelope = pellet.envelope_density.value;
    SoakedBatch batch;
    batch.dry = dry;
    batch.inside = inside * dry;
    batch.pour = batch.inside;
    if (method == SoakMethod::covered) {
        batch.film = soaked_film * dry;
        batch.pour += gaps_covered * (dry * (1.0 / loose - 1.0 / envelope)) * (1.0 * gram_per_millilitre);
    }
    const double packing = loose / envelope;
    batch.wet_volume = dry * swollen_grain(envelope, pellet.skeleton_density.value, inside) / packing;
    return batch;
}

const char* feel_of_uptake(Ratio share_of_capacity) {
    struct Step {
        double below;
        const char* word;
    };
    constexpr std::array<Step, 6> steps{
        {{0.08, "hard"}, {0.18, "firm"}, {0.35, "just soft"}, {0.55, "soft"}, {0.75, "very soft"}, {1e9, "mushy"}}};
    return std::find_if(steps.begin(), steps.end(), [&](const Step& step) { return share_of_capacity < step.below; })
        ->word;
}

}  // namespace baitwright
