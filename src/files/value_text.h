#pragma once

#include <string>
#include <variant>

#include "bait/ingredient_facts.h"
#include "quantities/quantity_text.h"

/// Values as the files of a library write them, whatever the form of the file: each is read back to the same value.
namespace baitwright {

std::string amount_text(Mass mass);
std::string amount_text(Volume volume);
std::string amount_text(const std::variant<Mass, Volume>& amount);

/// In the longest unit of which it is a whole number: people write "9 month" and "2 d".
std::string keeping_text(Time time);

/// In the unit the property is shown in, or bare.
template <class D>
std::string value_text(const PropertyFacts<D>& facts, Quantity<D> value) {
    return facts.bare_number ? number_text(value.si()) : exact_text(value, facts.unit, facts.symbol);
}

/// A pure ratio in per cent.
std::string percent_text(Ratio ratio);

}  // namespace baitwright
