#pragma once

#include <cstdint>
#include <vector>

#include "quantities/quantity.h"

namespace baitwright {

/// A pack that can be bought, any number of times.
struct PackOffer {
    Mass size;
    std::int64_t price_minor;
};

/// How many of each offer, in their order.
struct PackChoice {
    std::vector<std::int64_t> counts;
    std::int64_t outlay_minor = 0;
    Mass bought;
    bool proven = true;  ///< nothing costs less; false only where the search was cut short after `most_steps`
};

/// The whole packs that hold at least `need` for the least outlay, and of those the ones that leave least over. Exact,
/// in whole milligrams: with b the pack that is cheapest by the gram, s_b/gcd(s_j, s_b) packs j are never better than
/// the same mass in packs b, so that fewer of each j need be tried; branches that cost too much are cut off.
/// **Source**: covering knapsack by branch and bound with that dominance (pigeonhole; ours). **Valid for**: at least
/// one offer, sizes above 0, prices not below 0. **Test**: against a table of all sums,
/// `tests/answers/cheapest_packs_test.cpp`.
PackChoice cheapest_packs(const std::vector<PackOffer>& offers, Mass need, std::int64_t most_steps = 2'000'000);

}  // namespace baitwright
