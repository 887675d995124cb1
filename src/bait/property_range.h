#pragma once

#include <cmath>
#include <string>

#include "bait/ingredient_facts.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"

namespace baitwright {

/// "'absorption' must be from 0 to 10 g/g, not 12 g/g", in the unit the property is shown in; empty where the value
/// lies in its range.
template <class D>
std::string out_of_range_text(const PropertyFacts<D>& facts, Quantity<D> value) {
    const double shown_value = value.in(facts.unit);
    // A hair beyond, so that the limits themselves pass whatever their unit rounds to.
    const double slack = 1e-12 * std::abs(facts.highest);
    if (shown_value >= facts.lowest - slack && shown_value <= facts.highest + slack) return {};
    const std::string unit = facts.symbol.empty() ? "" : " " + std::string(facts.symbol);
    return in_quotes(facts.key) + " must be from " + number_text(facts.lowest) + " to " + number_text(facts.highest) +
           unit + ", not " + number_text_within(shown_value, 1e-9 * std::abs(shown_value)) + unit;
}

}  // namespace baitwright
