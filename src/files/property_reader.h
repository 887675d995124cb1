#pragma once

#include <string>

#include "bait/ingredient_facts.h"
#include "bait/property.h"
#include "bait/property_range.h"
#include "files/value_reader.h"

namespace baitwright {

/// Where a property does not say itself how sure it is and where it comes from.
struct PropertyDefaults {
    Ratio spread;
    Source source{Origin::standing, "from memory"};
};

/// The relative standard deviation under "spread": 0 to 300 %.
std::optional<Ratio> read_spread(TableReader& table);
/// The origin under "source". What is derived is worked out anew each time and cannot be stated.
std::optional<Source> read_source(TableReader& table);

/// A fault where a value lies outside the range of its property, in the unit the property is shown in.
template <class D>
bool in_range(const toml::node& node, const PropertyFacts<D>& facts, Quantity<D> value, FileFaults& faults) {
    const std::string refused = out_of_range_text(facts, value);
    if (refused.empty()) return true;
    faults.add(place_of(node), "out-of-range", refused, "check the number and its unit");
    return false;
}

/// A number for the example of a message: the one written, or else one that a property up to `highest` may have.
std::string example_of(const toml::node& node, double highest);

template <class D>
std::optional<Quantity<D>> read_value(const toml::node& node, const PropertyFacts<D>& facts, FileFaults& faults) {
    if constexpr (!Dimensional<D>) {
        if (facts.bare_number) return number_of(node, facts.key, facts.lowest, facts.highest, faults);
    }
    const auto value = parsed(node, facts.key, example_of(node, facts.highest) + " " + std::string(facts.symbol),
                              faults, [](std::string_view text) { return parse<Quantity<D>>(text); });
    return value && in_range(node, facts, *value, faults) ? value : std::nullopt;
}

/// A property as value alone or as { value, spread, source }; not known where it is not there or faulty.
template <class D>
Property<Quantity<D>> read_property(TableReader& table, const PropertyFacts<D>& facts,
                                    const PropertyDefaults& defaults) {
    const toml::node* node = table.find(facts.key);
    if (!node) return {};
    Property<Quantity<D>> property{{}, defaults.spread, defaults.source};
    if (const auto* long_form = node->as_table()) {
        TableReader inner(*long_form, place_of(*node), "a property", table.faults());
        property.spread = read_spread(inner).value_or(defaults.spread);
        property.source = read_source(inner).value_or(defaults.source);
        const std::string unit = facts.bare_number ? "1.5" : "\"... " + std::string(facts.symbol) + "\"";
        node = inner.required("value", unit);
        inner.refuse_unknown_keys();
    }
    const auto value = node ? read_value(*node, facts, table.faults()) : std::nullopt;
    if (!value) return {};
    property.value = *value;
    return property;
}

}  // namespace baitwright
