#pragma once

#include <optional>
#include <string_view>
#include <vector>

namespace baitwright {

struct Ingredient;

/// What can be said of a dry mix as a whole from the shares of its parts alone.
enum class MixProperty {
    absorption,
    slump,
    binder,
    fines,
    loose_density,
    moisture,
    protein,
    fat,
    carbohydrate,
    ash,
    fibre,
    salt,
    price,  ///< what a kilogram costs
};

/// How a property is written and told.
struct MixPropertyFacts {
    MixProperty property;
    std::string_view key;      ///< in files and JSON
    std::string_view name;     ///< in sentences
    std::string_view symbol;   ///< of the unit that its numbers here are in; empty for a bare number
    std::string_view example;  ///< as a limit is written
    double lowest, highest;    ///< a limit outside is a fault
    double step;               ///< so much is a step that a person would take
};

/// All of them, in the order in which they are shown.
const std::vector<MixPropertyFacts>& mix_properties();
const MixPropertyFacts& facts_of(MixProperty property);

/// A property of a mix is a quotient of two sums over its parts: sum(share x amount)/sum(share x weight), in the unit
/// of its facts. Most are means by mass. Absorption and slump are means over the parts that take water. For the loose
/// density the loose volumes are added; the mix itself lies a little closer, for fine grains fill the gaps of coarse
/// ones.
struct PropertyTerms {
    double amount, weight;
};

/// The terms of one part; nothing where the property is not known of it, and for the price. A soil without a
/// composition holds neither protein, fat, carbohydrate, fibre nor salt.
/// **Valid for**: a completed solid. **Test**: `tests/bait/mix_property_test.cpp`.
std::optional<PropertyTerms> terms_of(MixProperty property, const Ingredient& ingredient);

}  // namespace baitwright
