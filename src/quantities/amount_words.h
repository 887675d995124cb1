#pragma once

#include <optional>
#include <string_view>

#include "quantities/unit_table.h"

namespace baitwright {

/// So many of a unit: "half a kilo" is 0.5 of a kilogram.
struct AmountInWords {
    double number;
    const UnitRow* unit;
};

/// An amount whose number is said in words, whatever their case: "half a kilo", "a pint", "quarter of an hour", "three
/// quarters of a litre", "two and a half pints", "a pint and a half". Nothing where it is none: a word that is not
/// known, a unit of one letter ("a m"), or one whose measure does not come in parts.
std::optional<AmountInWords> amount_in_words(std::string_view text);

}  // namespace baitwright
