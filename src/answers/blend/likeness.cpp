#include "answers/blend/likeness.h"

#include <cmath>

#include "bait/colour.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using P = MixProperty;

std::optional<PropertyTerms> size_terms(const Ingredient& ingredient) {
    if (!ingredient.particle_size.known() || !(ingredient.particle_size.value > Length{})) return std::nullopt;
    return PropertyTerms{std::log(ingredient.particle_size.value.in(millimetre)), 1};
}

}  // namespace

const std::vector<LikenessAspect>& likeness_aspects() {
    static const std::vector<LikenessAspect> aspects{
        {"absorption", "g/g", 0.04, P::absorption},
        {"slump", "g/g", 0.07, P::slump},
        {"binder", "", 0.3, P::binder},
        {"fines", "%", 4, P::fines},
        {"loose density", "g/l", 30, P::loose_density},
        {"grain size", "", 0.25, std::nullopt},  // of the logarithm: a quarter larger
        {"lightness", "", 6, std::nullopt},
        {"redness", "", 6, std::nullopt},
        {"yellowness", "", 6, std::nullopt},
        {"protein", "%", 4, P::protein},
        {"fat", "%", 2, P::fat},
        {"carbohydrate", "%", 8, P::carbohydrate},
        {"ash", "%", 3, P::ash},
        {"fibre", "%", 3, P::fibre},
        {"salt", "%", 0.5, P::salt},
    };
    return aspects;
}

std::vector<std::optional<PropertyTerms>> likeness_terms(const Ingredient& ingredient, Preparation prepare) {
    const std::optional<Colour> colour = colour_called(ingredient.colour);
    const auto of_colour = [&](double Colour::*axis) {
        return colour ? std::optional<PropertyTerms>({(*colour).*axis, 1}) : std::nullopt;
    };
    std::vector<std::optional<PropertyTerms>> terms;
    for (const LikenessAspect& aspect : likeness_aspects()) {
        if (aspect.property)
            terms.push_back(terms_of(*aspect.property, ingredient));
        else if (aspect.name == "grain size")
            terms.push_back(size_terms(ingredient));
        else
            terms.push_back(of_colour(aspect.name == "lightness" ? &Colour::lightness
                                      : aspect.name == "redness" ? &Colour::redness
                                                                 : &Colour::yellowness));
        const bool water = aspect.property == P::absorption || aspect.property == P::slump;
        if (water && prepare == Preparation::soaked) terms.back() = PropertyTerms{0, 0};
    }
    return terms;
}

}  // namespace baitwright
