#include "bait/ingredient_completion.h"

#include <algorithm>
#include <cmath>

#include "bait/ingredient_facts.h"
#include "bait/skeleton_from_composition.h"

namespace baitwright {

namespace {

bool any_of(std::string_view key, std::initializer_list<std::string_view> keys) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

Need need_of_liquid(std::string_view key) {
    if (any_of(key, {"density", "water"})) return Need::required;
    return any_of(key, {"wetting", "binder"}) ? Need::optional : Need::absent;
}

Need need_of_shaped(IngredientKind kind, std::string_view key) {
    if (key == "diameter") return Need::required;
    if (key == "length") return Need::optional;
    const bool expander = kind == IngredientKind::expander;
    if (key == "porosity") return expander ? Need::required : Need::absent;
    return expander ? Need::absent : Need::optional;
}

template <class Q>
void derive(Property<Q>& property, Q value, double spread, std::string_view how) {
    if (!property.known()) property = {value, spread, {Origin::derived, std::string(how)}};
}

bool granular(IngredientKind kind) {
    return kind == IngredientKind::base || kind == IngredientKind::powder || kind == IngredientKind::soil;
}

Length usual_size(IngredientKind kind) {
    switch (kind) {
        case IngredientKind::powder:
            return 0.15 * millimetre;
        case IngredientKind::soil:
            return 0.1 * millimetre;
        case IngredientKind::seed:
        case IngredientKind::particle:
            return 3.0 * millimetre;
        default:
            return 0.7 * millimetre;
    }
}

double usual_size_spread(IngredientKind kind) {
    if (granular(kind)) return 2.1;
    return kind == IngredientKind::pellet || kind == IngredientKind::expander ? 1.05 : 1.15;
}

void complete_liquid(Ingredient& i) {
    derive(i.wetting, 0.8 * gram_per_millilitre, 0.3, "the usual 0.8 g of wetting per ml");
    derive<Ratio>(i.binder, 0.0, 0.0, "neither holds nor breaks");
}

/// Where the composition tells; but no lighter than the grain, or than a heap with hardly a gap in it would make it.
void complete_skeleton(Ingredient& i) {
    const Density least = i.envelope_density.known() ? i.envelope_density.value : i.loose_density.value / 0.9;
    if (const auto solid = skeleton_from_composition(i.composition, i.moisture.value))
        derive(i.skeleton_density, std::max(*solid, least), 0.03, "from its composition");
}

void complete_densities(Ingredient& i) {
    complete_skeleton(i);
    // An envelope of 1.15 g/ml is that of a meal; what pours heavier than that allows is denser stuff.
    Density envelope = std::max(1.15 * gram_per_millilitre, i.loose_density.value / 0.65);
    if (i.skeleton_density.known()) envelope = std::min(envelope, i.skeleton_density.value);
    derive(i.envelope_density, envelope, 0.12, "usual for a meal");
    derive(i.skeleton_density, std::max(1.42 * gram_per_millilitre, i.envelope_density.value), 0.06,
           "usual for plant and fish meals");
}

void complete_water_need(Ingredient& i) {
    if (!takes_water(i.kind)) {
        derive<Ratio>(i.absorption, 0.0, 0.0, "carries its own water");
        derive<Ratio>(i.slump, 0.0, 0.0, "carries its own water");
    }
    // What takes up nothing still turns to slurry with a film of water on its grains.
    derive<Ratio>(i.slump, i.absorption.value > 0 ? 1.7 * i.absorption.value : 0.05, 0.25, "1.7 times the absorption");
    derive(i.uptake_time, 20.0 * minute, 0.5, "usual 20 min");
    derive<Ratio>(i.inside_share, i.kind == IngredientKind::soil ? 0.4 : 0.8, 0.15, "usual for the kind");
    derive<Ratio>(i.moisture, 0.10, 0.25, "usual 10 %");
}

/// The share of a log-normal of sizes that lies under 0.1 mm.
Ratio share_of_fines(Length median, Ratio geometric_spread) {
    if (geometric_spread <= 1) return median < 0.1 * millimetre ? 1.0 : 0.0;
    return 0.5 * std::erfc(std::log(median.in(millimetre) / 0.1) / std::log(double(geometric_spread)) / std::sqrt(2.0));
}

void complete_fines(Ingredient& i) {
    // A meal or crumb has some dust beside its grains, whatever their size.
    const double by_size = share_of_fines(i.particle_size.value, i.particle_spread.value), usual = 0.04;
    if (granular(i.kind) && by_size > usual) derive<Ratio>(i.fines, by_size, 0.5, "by its sizes");
    derive<Ratio>(i.fines, granular(i.kind) ? usual : 0.0, 0.5, "usual for the kind");
}

void complete_shape(Ingredient& i) {
    const bool shaped = i.kind == IngredientKind::pellet || i.kind == IngredientKind::expander;
    if (shaped) {
        derive(i.length, 1.2 * i.diameter.value, 0.15, "1.2 times the diameter");
        derive(i.particle_size, i.diameter.value, 0.05, "the diameter");
    }
    if (i.kind == IngredientKind::pellet) {
        derive<Ratio>(i.capacity, 1.0, 0.3, "usual 1.0 g/g");
        derive(i.diffusivity, 2.5e-10 * square_metre_per_second, 0.5, "usual for a pressed pellet");
        derive(i.activation_energy, 35.0 * kilojoule_per_mole, 0.4, "usual 35 kJ/mol");
    }
    derive(i.particle_size, usual_size(i.kind), 0.4, "usual for the kind");
    derive<Ratio>(i.particle_spread, usual_size_spread(i.kind), 0.15, "usual for the kind");
    complete_fines(i);
    derive<Ratio>(i.binder, 0.0, 0.0, "neither holds nor breaks");
}

void check_needs(const Ingredient& ingredient, std::vector<PropertyFault>& faults) {
    visit_properties(ingredient, [&](const auto& facts, const auto& property) {
        const std::string key(facts.key), kind(name_of(ingredient.kind));
        const Need need = need_of(ingredient.kind, facts.key);
        if (need == Need::required && !property.known())
            faults.push_back(
                {key,
                 {"missing-value", "'" + key + "' is missing; a " + kind + " must state it",
                  key == "absorption" ? "measure it with the squeeze test (see docs/method.md)"
                                      : "add a line such as " + key + " = \"... " + std::string(facts.symbol) + "\""}});
        if (need == Need::absent && property.known())
            faults.push_back({key,
                              {"unfit-key", "'" + key + "' does not belong to a " + kind,
                               "take the line out, or give the ingredient another kind"}});
    });
}

template <class Q>
void check_above(const Property<Q>& higher, const Property<Q>& lower, bool or_equal, std::string_view higher_key,
                 std::string_view message, std::string_view hint, std::vector<PropertyFault>& faults) {
    if (!higher.known() || !lower.known()) return;
    // Units written differently ("500 g/l", "0.5 g/ml") may differ in the last bit and still be equal.
    const bool equal = std::abs(higher.value.si() - lower.value.si()) <= 1e-12 * std::abs(lower.value.si());
    if (equal ? or_equal : lower.value < higher.value) return;
    faults.push_back({std::string(higher_key), {"inconsistent-values", std::string(message), std::string(hint)}});
}

}  // namespace

Need need_of(IngredientKind kind, std::string_view key) {
    if (kind == IngredientKind::liquid) return need_of_liquid(key);
    if (any_of(key, {"density", "water", "wetting"})) return Need::absent;
    if (any_of(key, {"diameter", "length", "capacity", "diffusivity", "activation_energy", "porosity"}))
        return kind == IngredientKind::pellet || kind == IngredientKind::expander ? need_of_shaped(kind, key)
                                                                                  : Need::absent;
    if (key == "loose_density") return Need::required;
    if (key == "absorption" && takes_water(kind)) return Need::required;
    return Need::optional;
}

std::vector<PropertyFault> faults_of(const Ingredient& i) {
    std::vector<PropertyFault> faults;
    check_needs(i, faults);
    const bool neither = !takes_water(i.kind) && i.slump.value == 0.0 && i.absorption.value == 0.0;
    if (!neither)
        check_above(i.slump, i.absorption, false, "slump", "'slump' must be above 'absorption'",
                    "slump is the water at which an up-ended pot will not stand; it takes more than to just hold",
                    faults);
    check_above(i.envelope_density, i.loose_density, false, "envelope_density",
                "'envelope_density' must be above 'loose_density'",
                "a single grain is denser than the loose heap with air between the grains", faults);
    check_above(i.skeleton_density, i.loose_density, false, "skeleton_density",
                "'skeleton_density' must be above 'loose_density'",
                "the solid itself is denser than a loose heap of it with air between the grains", faults);
    check_above(i.skeleton_density, i.envelope_density, true, "skeleton_density",
                "'skeleton_density' must not be below 'envelope_density'",
                "the solid without its pores is at least as dense as the grain with them", faults);
    return faults;
}

void complete(Ingredient& ingredient) {
    if (ingredient.kind == IngredientKind::liquid) return complete_liquid(ingredient);
    complete_water_need(ingredient);
    complete_densities(ingredient);
    complete_shape(ingredient);
}

}  // namespace baitwright
