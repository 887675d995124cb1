#pragma once

#include <cstdint>
#include <vector>

#include "answers/money/pack_on_offer.h"

namespace baitwright {

/// How many of each pack, in their order.
struct PackChoice {
    std::vector<std::int64_t> counts;
    std::int64_t milligrams = 0;  ///< in all
    std::int64_t outlay_minor = 0;
    std::int64_t at_least_minor = 0;  ///< no packs cost less than that: the outlay, where all were weighed
    bool least_left = true;           ///< none that cost as much leave less over

    [[nodiscard]] bool proven() const { return at_least_minor == outlay_minor; }
};

/// What whole packs can come to: every sum of their sizes with the least that it costs, rising, worked out as far as
/// it is asked for. All buying is reckoned by it: for one session, for many, and in bulk.
/// **Source**: ours; the sums of a covering knapsack in rising order, each out of a smaller one and one pack more.
/// **Valid for**: sizes above 0, prices not below 0. **Test**: against a table of all sums,
/// `tests/answers/cheapest_packs_test.cpp`.
class PackSums {
public:
    struct Sum {
        std::int64_t milligrams, price_minor;
        std::size_t last;  ///< the pack that was added last
    };

    explicit PackSums(std::vector<PackOnOffer> packs);

    [[nodiscard]] const std::vector<PackOnOffer>& packs() const { return packs_; }

    /// The packs that hold at least that for the least outlay, and of those the ones that leave least over. With b the
    /// pack that is cheapest by the gram, s_b/gcd(s_j, s_b) packs j are never better than the same mass in packs b, so
    /// that more than so many of the others are bought in packs b alone. Where even that takes more than a few steps,
    /// more is bought in packs b, and the price by the gram of b is the bound.
    PackChoice cheapest(std::int64_t milligrams);

    /// Works out the sums past that by one of each pack. False where it takes more steps, one for each sum and pack.
    bool reach(std::int64_t milligrams, std::int64_t most_steps);
    [[nodiscard]] std::int64_t steps() const { return static_cast<std::int64_t>(sums_.size() * packs_.size()); }

    /// Those worked out, rising.
    [[nodiscard]] const std::vector<Sum>& all() const { return sums_; }
    /// Those of them that no larger one undercuts.
    [[nodiscard]] std::vector<Sum> worth_having() const;
    /// How many of each pack make up a sum.
    [[nodiscard]] std::vector<std::int64_t> counts(std::int64_t milligrams) const;

private:
    [[nodiscard]] std::vector<Sum>::const_iterator from(std::int64_t milligrams) const;
    void add_next();

    std::vector<PackOnOffer> packs_;
    std::size_t bulk_ = 0;                             // the pack that is cheapest by the gram
    std::int64_t largest_ = 0, most_beside_bulk_ = 0;  // milligrams
    std::vector<Sum> sums_{{0, 0, 0}};
    std::vector<std::size_t> next_;  // by pack, the sum that it is to be added to next
};

}  // namespace baitwright
