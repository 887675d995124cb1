#include "answers/money/pack_sums.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace baitwright {

namespace {

struct SizesOnSale {
    std::int64_t unit = 0;  // what all are multiples of
    std::int64_t largest = 0;
};

SizesOnSale sizes_on_sale(const std::vector<PackOnSale>& packs) {
    SizesOnSale sizes;
    for (const PackOnSale& pack : packs) {
        sizes.unit = std::gcd(sizes.unit, pack.grams);
        sizes.largest = std::max(sizes.largest, pack.grams);
    }
    return sizes;
}

}  // namespace

std::int64_t PackSums::steps(const std::vector<PackOnSale>& packs, std::int64_t most) {
    if (packs.empty()) return 0;
    const SizesOnSale sizes = sizes_on_sale(packs);
    return ((most + sizes.largest) / sizes.unit + 1) * static_cast<std::int64_t>(packs.size());
}

PackSums::PackSums(const std::vector<PackOnSale>& packs, std::int64_t most) : packs_(packs) {
    if (packs.empty()) return;
    const SizesOnSale sizes = sizes_on_sale(packs);
    unit_ = sizes.unit;
    const std::int64_t entries = (most + sizes.largest) / unit_ + 1;
    cheapest_.assign(static_cast<std::size_t>(entries), -1);
    last_.assign(static_cast<std::size_t>(entries), -1);
    cheapest_[0] = 0;
    for (std::int64_t u = 1; u < entries; ++u)
        for (std::size_t p = 0; p < packs.size(); ++p) {
            const std::int64_t before = u - packs[p].grams / unit_;
            if (before < 0 || cheapest_[static_cast<std::size_t>(before)] < 0) continue;
            const std::int64_t price = cheapest_[static_cast<std::size_t>(before)] + packs[p].price_minor;
            std::int64_t& best = cheapest_[static_cast<std::size_t>(u)];
            if (best >= 0 && best <= price) continue;
            best = price;
            last_[static_cast<std::size_t>(u)] = static_cast<std::int32_t>(p);
        }
    for (std::int64_t u = 0; u < entries; ++u)
        if (cheapest_[static_cast<std::size_t>(u)] >= 0)
            sums_.push_back({u * unit_, cheapest_[static_cast<std::size_t>(u)]});
}

std::vector<PackSums::Sum> PackSums::worth_having() const {
    std::vector<Sum> worth;
    std::int64_t least_beyond = std::numeric_limits<std::int64_t>::max();
    // NOLINTNEXTLINE(modernize-loop-convert): the other way round, and <ranges> takes long to compile
    for (auto sum = sums_.rbegin(); sum != sums_.rend(); ++sum) {
        if (sum->price_minor > least_beyond) continue;
        least_beyond = sum->price_minor;
        worth.push_back(*sum);
    }
    std::reverse(worth.begin(), worth.end());
    return worth;
}

std::vector<std::int64_t> PackSums::counts(std::int64_t grams) const {
    std::vector<std::int64_t> counts(packs_.size(), 0);
    while (grams > 0) {
        const auto pack = static_cast<std::size_t>(last_[static_cast<std::size_t>(grams / unit_)]);
        ++counts[pack];
        grams -= packs_[pack].grams;
    }
    return counts;
}

}  // namespace baitwright
