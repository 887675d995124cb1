#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "answers/money/priced_need.h"
#include "answers/shared/range.h"
#include "answers/strategy/unroll_strategy.h"

namespace baitwright {

/// As many normals as a range draws at most before anything was learnt: each of them has its row of direction numbers.
inline constexpr std::size_t most_cost_normals = 195;

/// The 5, 50 and 95 % points of what is used, in minor units, from the spreads of the ingredients: 256 Sobol points
/// draw for each solid its absorption, gap, moisture, loose and envelope density and size, the same in every feed, and
/// one hand and one error of memory for all, by the rules of `mix_doubt.h`. The cups, balls and grams that go in stay;
/// what they hold changes. Kept mix that a feed leaves over goes into it where it holds more than in the middle: fresh
/// mix is made for what is then still lacking. Not drawn: additives, hookbaits, prices, what is in the kept mix, and
/// what comes after the 32nd solid. Ingredients without a price are left out.
/// **Source**: method as in JCGM 101:2008 (from memory). **Test**: `tests/answers/cost_range_test.cpp`.
/// `priced` is in the order of the totals, `asked` is what the strategy was unrolled with. The same seed gives the same
/// bytes.
Range<double> used_range(const UnrolledStrategy& unrolled, const std::vector<PricedIngredient>& priced,
                         const StrategyRequest& asked, std::uint64_t seed);

}  // namespace baitwright
