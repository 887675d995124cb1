#include "answers/mix/odd_mix.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/scale_mix.h"
#include "bait/wetted_mix.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double soft_wetness = 1.7;

std::string percents(double share) {
    return std::to_string(std::lround(share * 100)) + " %";
}

void check_sinking(const ResolvedMix& mix, std::vector<Warning>& odd) {
    const MixNumbers numbers = numbers_of(mix);
    const WettedMix soft = wet(numbers, soft_wetness);
    const SpecificVolume volume = wet_volume(pack(numbers, soft), MixState::cupped, soft.wetness);
    const double density = (soft.wet_mass / volume).in(gram_per_millilitre);
    if (density < 1)
        odd.push_back({"floats", "soft in a cup it weighs only " + std::to_string(std::lround(density * 1000)) +
                                     " g a litre, so it floats until its air is out"});
}

void check_fines(const ResolvedMix& mix, std::vector<Warning>& odd) {
    double fines = 0;
    for (const SolidPart& part : mix.solids) fines += part.share * part.ingredient.fines.value;
    if (fines > 0.5)
        odd.push_back({"mostly-fines", percents(fines) +
                                           " of it is dust under 0.1 mm: it clouds rather than feeds, and it "
                                           "dusts when tipped"});
}

void check_binding(const ResolvedMix& mix, std::vector<Warning>& odd) {
    double binder = 0;
    for (const SolidPart& part : mix.solids) binder += part.share * part.ingredient.binder.value;
    const WettedMix wetted = wet(numbers_of(mix), mix.feel.aim);
    for (std::size_t i = 0; i < mix.liquids.size(); ++i)
        binder += wetted.additives[i] * mix.liquids[i].ingredient.binder.value;
    for (std::size_t i = 0; i < mix.doses.size(); ++i)
        binder += wetted.additives[mix.liquids.size() + i] * mix.doses[i].ingredient.binder.value;
    constexpr double falls_apart = -1.0;  // holds a third as long as a plain mix
    if (binder < falls_apart && mix.feel.aim > 1.1)
        odd.push_back({"breaks-up", "its parts break up rather than bind, so a ball will not last at the feel '" +
                                        mix.feel.name + "'"});
}

void check_doses(const ResolvedMix& mix, const std::vector<Feel>& feels, std::vector<Warning>& odd) {
    MixRequest one_kilogram;
    one_kilogram.target = DryMass{1.0 * kilogram};
    const MixAnswer answer = scale_mix(mix, feels, one_kilogram);
    for (const Warning& warning : answer.warnings)
        if (warning.code == "over-label" || warning.code == "too-wet" || warning.code == "no-price" ||
            warning.code == "other-currency")
            odd.push_back({warning.code, warning.message});
    constexpr double usual_most = 0.01, liquid_most = 0.03;  // of the dry mass; common practice, no source
    for (const AdditiveAnswer& additive : answer.additives) {
        const double share = additive.mass / answer.dry_mass;
        if (additive.of_label_max || share <= 10 * (additive.liquid ? liquid_most : usual_most)) continue;
        odd.push_back({"big-dose", additive.name + " comes to " + percents(share) +
                                       " of the dry mass, more than ten times what is usual for an additive"});
    }
}

void check_parts(const ResolvedMix& mix, std::vector<Warning>& odd) {
    for (const SolidPart& part : mix.solids) {
        const Ingredient& in = part.ingredient;
        if (in.kind == IngredientKind::expander)
            odd.push_back({"hook-pellet", in.name + " is a hook pellet: it takes no part in the water"});
        if (part.share < 0.002)
            odd.push_back({"tiny-part", in.name + " is under 2 g in a kilogram, less than a kitchen scale can tell"});
    }
}

}  // namespace

std::vector<Warning> oddities_of(const ResolvedMix& mix, const std::vector<Feel>& feels) {
    std::vector<Warning> odd;
    check_sinking(mix, odd);
    check_fines(mix, odd);
    check_binding(mix, odd);
    check_doses(mix, feels, odd);
    check_parts(mix, odd);
    return odd;
}

}  // namespace baitwright
