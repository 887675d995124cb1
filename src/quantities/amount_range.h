#pragma once

#include <string>
#include <string_view>

#include "quantities/money.h"
#include "quantities/quantity.h"

/// From where to where an amount is one of bait at all, whoever states it: a flag, a file or the store. Wide enough for
/// any bucket, narrow enough that no sum or ratio of amounts leaves what a number can hold. **Source**: our own bounds.
namespace baitwright {

/// What an amount of one measure can be.
template <class Q>
struct AmountRange {
    Q least, most;
    std::string_view least_text, most_text;  ///< as messages write them: "1 mg", "10000 kg"
    std::string_view example;                ///< "400g"
};

template <class Q>
const AmountRange<Q>& range_of();
template <>
const AmountRange<Mass>& range_of<Mass>();
template <>
const AmountRange<Volume>& range_of<Volume>();
template <>
const AmountRange<Length>& range_of<Length>();
template <>
const AmountRange<Time>& range_of<Time>();
template <>
const AmountRange<Pressure>& range_of<Pressure>();

/// Whether it lies in the range of its measure; a hair beyond counts, whatever its unit rounds to.
template <class Q>
bool lies_in_range(Q amount) {
    constexpr double beyond = 1e-9;
    const AmountRange<Q>& range = range_of<Q>();
    return amount.si() >= range.least.si() * (1 - beyond) && amount.si() <= range.most.si() * (1 + beyond);
}

/// A price is not below zero and at most 1,000,000 of pounds, as many minor units in other currencies.
bool lies_in_range(const Money& price);
Money dearest_price(const Currency& currency);

/// "from 1 mg to 10000 kg"; of a price "from £0.00 to £1000000.00".
template <class Q>
std::string range_text() {
    const AmountRange<Q>& range = range_of<Q>();
    return "from " + std::string(range.least_text) + " to " + std::string(range.most_text);
}
std::string price_range_text(const Currency& currency);

/// The amount, where it lies in its range; else InputError "out-of-range", with the range and an example.
Mass in_range(Mass amount);
Volume in_range(Volume amount);
Length in_range(Length amount);
Time in_range(Time amount);
Pressure in_range(Pressure amount);
Money in_range(const Money& price);

/// The same, nothing at all being an amount too: water that is yet to be poured, a bag without a rest, a time that
/// has not begun.
Mass nothing_or_in_range(Mass amount);
Volume nothing_or_in_range(Volume amount);
Time nothing_or_in_range(Time amount);

}  // namespace baitwright
