#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "bait/ingredient.h"
#include "bait/mix_property.h"
#include "bait/recipe.h"

namespace baitwright {

/// One of the ways in which two mixes can differ, and how far they must differ in it for an angler to notice.
struct LikenessAspect {
    std::string_view name, symbol;
    double step;                          ///< about the least difference that can be noticed
    std::optional<MixProperty> property;  ///< nothing for what only likeness looks at: colour and size
};

/// All aspects, in the order in which they are told: absorption, slump, binder, fines, loose density, size, colour
/// (light, red, yellow), protein, fat, carbohydrate, ash, fibre, salt. The weight of an aspect is one over its step.
/// **Source** of the steps: common practice, no source.
const std::vector<LikenessAspect>& likeness_aspects();

/// What a part gives to each aspect of a mix, as the two sums of `PropertyTerms`; nothing where it is not known of it.
/// A soaked part takes no water. The size counts by its logarithm, so that twice as large is as far as half as large.
std::vector<std::optional<PropertyTerms>> likeness_terms(const Ingredient& ingredient, Preparation prepare);

}  // namespace baitwright
