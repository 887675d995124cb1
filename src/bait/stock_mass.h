#pragma once

#include <compare>
#include <cstdint>

#include "quantities/money.h"
#include "quantities/quantity.h"

namespace baitwright {

/// A mass in the shed, in whole milligrams: sums of them are exact, so that a ledger of any length comes out even.
struct Milligrams {
    std::int64_t count = 0;

    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the zero of a defaulted <=> for a pointer
    auto operator<=>(const Milligrams&) const = default;
    Milligrams& operator+=(Milligrams other) {
        count += other.count;
        return *this;
    }
    Milligrams& operator-=(Milligrams other) {
        count -= other.count;
        return *this;
    }
    friend Milligrams operator+(Milligrams a, Milligrams b) { return a += b; }
    friend Milligrams operator-(Milligrams a, Milligrams b) { return a -= b; }
    friend Milligrams operator-(Milligrams a) { return {-a.count}; }
};

/// The nearest whole milligram, halves to the even one. **Valid for**: masses below 9e12 kg.
inline Milligrams in_milligrams(Mass mass) {
    return {round_half_even(mass.si() * 1e6)};
}

inline Mass mass_of(Milligrams mass) {
    return Mass::from_si(static_cast<double>(mass.count) / 1e6);
}

}  // namespace baitwright
