#include <cmath>

#include "bait/amount.h"
#include "bait/learned_hand.h"
#include "bait/soaked_batch.h"
#include "bait/wetted_mix.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

SolidNumbers numbers_of_solid(const Ingredient& i, Preparation prepare, Ratio share, const WaterMarks& marks) {
    const bool soaked = prepare == Preparation::soaked;
    SolidNumbers n{};
    n.share = share;
    n.takes_water = takes_water(i.kind) && !soaked;
    if (n.takes_water) n.marks = marks;
    n.moisture = i.moisture.value;
    n.inside = i.inside_share.value;
    if (soaked) {
        n.carried = soaked_uptake * i.capacity.value;
        n.film = soaked_film;
    }
    n.loose = i.loose_density.value;
    n.envelope = i.envelope_density.value;
    n.skeleton = i.skeleton_density.value;
    n.size = i.particle_size.value;
    n.springy = i.kind == IngredientKind::base || i.kind == IngredientKind::powder;
    return n;
}

AdditiveNumbers numbers_of_additive(const Ingredient& i) {
    AdditiveNumbers n{};
    n.liquid = i.kind == IngredientKind::liquid;
    if (n.liquid) {
        n.density = i.density.value;
        n.wetting = i.wetting.value / i.density.value;
    } else {
        n.as_solid = numbers_of_solid(i, Preparation::as_bought, 0.0, {i.absorption.value, i.slump.value});
    }
    return n;
}

AdditiveNumbers numbers_of_dose(const ResolvedDose& dose) {
    AdditiveNumbers n = numbers_of_additive(dose.ingredient);
    const Mass each = mass_of_amount(dose.rate.each, dose.ingredient);
    const Ratio per_kilogram = each / (1.0 * kilogram) * dose.reach;
    switch (dose.rate.basis) {
        case DoseBasis::per_kg_dry:
        case DoseBasis::share_of_dry:
            n.fixed = per_kilogram;
            break;
        case DoseBasis::per_kg_wet:
            n.by_wet = per_kilogram;
            break;
        case DoseBasis::per_litre_water:
            n.by_water = per_kilogram;
            break;  // a litre of water weighs a kilogram
        case DoseBasis::per_pint_pellets:
            n.fixed = each / (1.0 * imperial_pint) * dose.pellets;
            break;
    }
    return n;
}

}  // namespace

MixNumbers numbers_of(const ResolvedMix& mix) {
    MixNumbers numbers;
    for (const SolidPart& part : mix.solids)
        numbers.solids.push_back(
            numbers_of_solid(part.ingredient, part.prepare, part.share, known_marks(part, mix.hand)));
    for (const LiquidPart& liquid : mix.liquids) {
        AdditiveNumbers n = numbers_of_additive(liquid.ingredient);
        n.fixed = liquid.per_dry;
        numbers.additives.push_back(n);
    }
    for (const ResolvedDose& dose : mix.doses) numbers.additives.push_back(numbers_of_dose(dose));
    if (mix.learnt_mix && mix.learnt_mix->cup_weight) numbers.cup_weight = std::exp(mix.learnt_mix->cup_weight->mean);
    return numbers;
}

}  // namespace baitwright
