#include "answers/mix/dose_amounts.h"

#include "answers/mix/scale_mix.h"
#include "answers/shared/over_label.h"
#include "bait/amount.h"
#include "bait/label.h"
#include "bait/pellets_alone.h"
#include "physics/solutions.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

Solution solution_of(const Ingredient& additive, Mass mass, Mass water, Temperature temperature,
                     std::vector<Warning>& warnings) {
    Solution solution{additive.name, mass / (mass + water), std::nullopt, std::nullopt};
    const auto solute = find_solute(additive.solute);
    if (!solute) return solution;
    const Ratio fraction = solute_share(additive) * mass / (mass + water);
    if (fraction > soluble_fraction(*solute, temperature)) {
        warnings.push_back({"undissolved", "so much " + additive.name + " does not dissolve in that water", true});
        return solution;
    }
    solution.density = solution_density(*solute, fraction);
    solution.water_activity = water_activity(*solute, fraction);
    return solution;
}

/// The bait an amount is of: its ingredient where one is named, which a volume needs.
struct Bait {
    std::optional<Ingredient> ingredient;
    Mass mass;
    Volume pellets;
};

Bait bait_of(const Shelf& shelf, const MassOrVolume& amount, const std::string& name) {
    Bait bait;
    if (!name.empty()) bait.ingredient = shelf.ingredient(name);
    if (!bait.ingredient) {
        if (!std::holds_alternative<Mass>(amount))
            throw UsageError("no-bait", "a volume of bait says nothing without the bait's name",
                             "add --bait \"fishmeal micro pellet 2 mm\", or give the amount in grams");
        bait.mass = std::get<Mass>(amount);
        return bait;
    }
    bait.mass = mass_of_amount(amount, *bait.ingredient);
    bait.pellets = bait.mass / measured_density(*bait.ingredient);
    return bait;
}

void check_above_zero(Mass mass, const char* what) {
    if (!(mass > Mass{}) || mass > 10000.0 * kilogram)
        throw UsageError("out-of-range", std::string(what) + " must be above zero and at most 10 t",
                         "for example 15 ml or 500 g");
}

DoseRate rate_of(const Shelf& shelf, const AdditiveRequest& request, const Ingredient& additive) {
    if (request.rate && request.carried)
        throw UsageError("two-rates", "a rate and an earlier dose were both given", "give one of --rate and --as");
    if (request.rate) return *request.rate;
    if (request.carried) {
        const Bait before = bait_of(shelf, request.carried->bait_amount, request.carried->bait);
        check_above_zero(before.mass, "the bait dosed before");
        return {DoseBasis::per_kg_dry,
                mass_of_amount(request.carried->additive, additive) * ((1.0 * kilogram) / before.mass)};
    }
    if (additive.label_dose) return *additive.label_dose;
    throw UsageError("no-rate", "no label dose is known for '" + additive.name + "'",
                     R"(say it with --rate "25 ml per kg dry", or with --as "15ml in 0.5pt of ...")");
}

void check_ground(const DoseRate& rate, const DoseGround& ground) {
    if (rate.basis == DoseBasis::per_litre_water && !(ground.water > Mass{}))
        throw UsageError("no-water", "this additive is dosed by the litre of water", "say how much with --water 1l");
    if (rate.basis == DoseBasis::per_pint_pellets && !(ground.pellets > Volume{}))
        throw UsageError("no-bait", "this additive is dosed by the pint of pellets", "name them with --bait");
}

DoseLine line_of(const Ingredient& additive, const DoseRate& rate, Mass mass, Mass dry) {
    DoseLine line;
    line.name = additive.name;
    line.liquid = additive.kind == IngredientKind::liquid;
    line.rate = dose_rate_text(rate);
    line.mass = mass;
    line.volume = mass / measured_density(additive);
    if (line.liquid) line.wetting = line.volume * additive.wetting.value;
    line.per_dry = mass / dry;
    return line;
}

}  // namespace

DoseAnswer dose_additive(const Shelf& shelf, const AdditiveRequest& request) {
    const Ingredient additive = shelf.ingredient(request.additive);
    const Bait bait = bait_of(shelf, request.amount, request.bait);
    check_above_zero(bait.mass, "the amount of bait");
    DoseAnswer answer;
    answer.of = bait.ingredient ? bait.ingredient->name : "bait";
    answer.dry_mass = bait.mass;
    if (request.water) answer.water = *request.water * (1.0 * gram_per_millilitre);
    const DoseGround ground{bait.mass, bait.mass, answer.water, bait.pellets};
    const DoseRate rate = rate_of(shelf, request, additive);
    check_ground(rate, ground);
    DoseLine line = line_of(additive, rate, dosed_mass(rate, additive, ground), bait.mass);
    if (request.carried) line.rate = "as before, by weight of bait";
    check_above_zero(line.mass, "the dose");
    line.of_label_max = share_of_label(additive, line.mass, ground);
    if (line.of_label_max.value_or(0.0) > 1 + 1e-9)
        answer.warnings.push_back(over_label(additive, line.mass, *line.of_label_max));
    constexpr Temperature usual_water = Temperature::from_celsius(15);
    if (request.water) answer.solution = solution_of(additive, line.mass, answer.water, usual_water, answer.warnings);
    answer.additives.push_back(std::move(line));
    return answer;
}

DoseAnswer dose_mix(const Shelf& shelf, const Recipe& recipe, const MixRequest& request) {
    const ResolvedMix mix = resolve_as_made(recipe, shelf);
    const MixAnswer scaled = scale_mix(mix, shelf.feels(), request);
    DoseAnswer answer;
    answer.of = mix.name;
    answer.dry_mass = scaled.dry_mass;
    answer.water = scaled.water_to_add + scaled.water_already_in;
    for (const AdditiveAnswer& additive : scaled.additives)
        answer.additives.push_back({additive.name, additive.liquid, additive.rate, additive.mass, additive.volume,
                                    additive.wetting, additive.mass / scaled.dry_mass, additive.of_label_max});
    for (const Warning& warning : scaled.warnings)
        if (warning.code != "no-price" && warning.code != "other-currency") answer.warnings.push_back(warning);
    if (answer.additives.empty())
        answer.warnings.push_back({"no-additive", "nothing is dosed into '" + mix.name + "'"});
    if (answer.additives.size() == 1 && answer.water > Mass{}) {
        const Ingredient& only = mix.liquids.empty() ? mix.doses.front().ingredient : mix.liquids.front().ingredient;
        answer.solution =
            solution_of(only, answer.additives.front().mass, answer.water, request.water_temperature, answer.warnings);
    }
    return answer;
}

}  // namespace baitwright
