#include "bait/mix_property.h"

#include "bait/ingredient.h"
#include "bait/ingredient_kind.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

std::optional<PropertyTerms> by_mass(double amount) {
    return PropertyTerms{amount, 1};
}

std::optional<PropertyTerms> of_the_thirsty(const Ingredient& ingredient, const Property<Ratio>& mark) {
    if (!takes_water(ingredient.kind)) return PropertyTerms{0, 0};
    return by_mass(mark.value);
}

std::optional<PropertyTerms> percent_of(const Property<Ratio>& share) {
    if (!share.known()) return std::nullopt;
    return by_mass(share.value.in(percent));
}

std::optional<PropertyTerms> of_composition(const Ingredient& ingredient, Property<Ratio> Composition::*part) {
    const auto stated = percent_of(ingredient.composition.*part);
    const bool mineral = ingredient.kind == IngredientKind::soil && part != &Composition::ash;
    return stated || !mineral ? stated : by_mass(0);
}

}  // namespace

const std::vector<MixPropertyFacts>& mix_properties() {
    using P = MixProperty;
    static const std::vector<MixPropertyFacts> all{
        {P::absorption, "absorption", "absorption", "g/g", "0.55 g/g", 0, 10, 0.01},
        {P::slump, "slump", "slump", "g/g", "0.9 g/g", 0, 20, 0.01},
        {P::binder, "binder", "binder", "", "0.5", -20, 20, 0.1},
        {P::fines, "fines", "fines", "%", "15 %", 0, 100, 1},
        {P::loose_density, "loose_density", "loose density", "g/l", "500 g/l", 20, 3000, 10},
        {P::moisture, "moisture", "moisture", "%", "12 %", 0, 100, 1},
        {P::protein, "protein", "protein", "%", "25 %", 0, 100, 1},
        {P::fat, "fat", "fat", "%", "8 %", 0, 100, 1},
        {P::carbohydrate, "carbohydrate", "carbohydrate", "%", "50 %", 0, 100, 1},
        {P::ash, "ash", "ash", "%", "8 %", 0, 100, 1},
        {P::fibre, "fibre", "fibre", "%", "5 %", 0, 100, 1},
        {P::salt, "salt", "salt", "%", "2 %", 0, 100, 0.1},
        {P::price, "price", "price", "a kilo", "\u00a32.50 per kg", 0, 1e9, 1},
    };
    return all;
}

const MixPropertyFacts& facts_of(MixProperty property) {
    return mix_properties()[static_cast<std::size_t>(property)];
}

std::optional<PropertyTerms> terms_of(MixProperty property, const Ingredient& ingredient) {
    using P = MixProperty;
    switch (property) {
        case P::absorption:
            return of_the_thirsty(ingredient, ingredient.absorption);
        case P::slump:
            return of_the_thirsty(ingredient, ingredient.slump);
        case P::binder:
            return by_mass(ingredient.binder.value);
        case P::fines:
            return by_mass(ingredient.fines.value.in(percent));
        case P::loose_density:
            return PropertyTerms{1, 1.0 / ingredient.loose_density.value.in(gram_per_litre)};
        case P::moisture:
            return percent_of(ingredient.moisture);
        case P::protein:
            return of_composition(ingredient, &Composition::protein);
        case P::fat:
            return of_composition(ingredient, &Composition::fat);
        case P::carbohydrate:
            return of_composition(ingredient, &Composition::carbohydrate);
        case P::ash:
            return of_composition(ingredient, &Composition::ash);
        case P::fibre:
            return of_composition(ingredient, &Composition::fibre);
        case P::salt:
            return of_composition(ingredient, &Composition::salt);
        case P::price:
            return std::nullopt;
    }
    return std::nullopt;
}

}  // namespace baitwright
