#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

/// Words with amounts in them, which a person reads in the units of their choice.
struct MeasuredText {
    using Amount = std::variant<Temperature, Length, Speed, Time, Volume>;

    std::string words;  ///< "{}" where an amount stands
    std::vector<Amount> amounts;

    MeasuredText() = default;
    MeasuredText(std::string text, std::vector<Amount> in_it = {})
        : words(std::move(text)), amounts(std::move(in_it)) {}
    MeasuredText(const char* text) : words(text) {}
};

inline bool operator==(const MeasuredText& a, const MeasuredText& b) {
    return a.words == b.words && a.amounts == b.amounts;
}

}  // namespace baitwright
