#pragma once

#include <cstdint>
#include <vector>

#include "answers/money/buy_packs.h"

namespace baitwright {

/// What whole packs can come to: every sum of their sizes with the least that it costs.
class PackSums {
public:
    struct Sum {
        std::int64_t grams, price_minor;
    };

    /// What tabulating the sums up to `most` grams takes: a step for each sum and pack.
    static std::int64_t steps(const std::vector<PackOnSale>& packs, std::int64_t most);

    /// Sums up to `most` grams and the first beyond it.
    PackSums(const std::vector<PackOnSale>& packs, std::int64_t most);

    /// Rising.
    [[nodiscard]] const std::vector<Sum>& all() const { return sums_; }
    /// Those that no larger sum undercuts.
    [[nodiscard]] std::vector<Sum> worth_having() const;
    /// How many of each pack make up a sum, in the order of the packs.
    [[nodiscard]] std::vector<std::int64_t> counts(std::int64_t grams) const;

private:
    const std::vector<PackOnSale>& packs_;
    std::int64_t unit_ = 1;               // the greatest common divisor of the sizes
    std::vector<std::int64_t> cheapest_;  // by grams/unit; below 0 where no packs come to that
    std::vector<std::int32_t> last_;      // the pack that was added last
    std::vector<Sum> sums_;
};

}  // namespace baitwright
