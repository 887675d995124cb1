#include "answers/money/pack_sums.h"

#include <algorithm>
#include <limits>
#include <numeric>

namespace baitwright {

namespace {

using Whole = std::int64_t;
// NOLINTNEXTLINE(modernize-use-using): __extension__ goes with a typedef alone
__extension__ typedef __int128 Wide;  // milligrams times pence

constexpr Whole few_steps = 500'000;
constexpr Whole endless = std::numeric_limits<Whole>::max() / 4;

Whole divided_up(Wide value, Wide by) {
    return static_cast<Whole>((value + by - 1) / by);
}

}  // namespace

PackSums::PackSums(std::vector<PackOnOffer> packs) : packs_(std::move(packs)), next_(packs_.size(), 0) {
    for (std::size_t p = 0; p < packs_.size(); ++p) {
        largest_ = std::max(largest_, packs_[p].milligrams);
        if (Wide(packs_[p].price_minor) * packs_[bulk_].milligrams <
            Wide(packs_[bulk_].price_minor) * packs_[p].milligrams)
            bulk_ = p;
    }
    Wide most = 0;
    for (const PackOnOffer& pack : packs_)
        most +=
            Wide(packs_[bulk_].milligrams / std::gcd(pack.milligrams, packs_[bulk_].milligrams) - 1) * pack.milligrams;
    most_beside_bulk_ = static_cast<Whole>(std::min(most, Wide(endless)));
}

PackChoice PackSums::cheapest(Whole milligrams) {
    PackChoice choice{std::vector<Whole>(packs_.size(), 0)};
    if (packs_.empty() || milligrams <= 0) return choice;
    const PackOnOffer& bulk = packs_[bulk_];
    Whole of_bulk = std::max<Whole>(0, divided_up(milligrams - most_beside_bulk_, bulk.milligrams));
    choice.least_left = reach(milligrams - of_bulk * bulk.milligrams, few_steps);
    const Whole in_reach = std::max<Whole>(0, sums_.back().milligrams - largest_);
    of_bulk = std::max(of_bulk, divided_up(milligrams - in_reach, bulk.milligrams));
    const Whole rest = std::max<Whole>(0, milligrams - of_bulk * bulk.milligrams);
    auto best = from(rest);
    for (auto sum = best; sum != sums_.end() && sum->milligrams < rest + largest_; ++sum)
        if (sum->price_minor < best->price_minor) best = sum;
    choice.counts = counts(best->milligrams);
    choice.counts[bulk_] += of_bulk;
    choice.milligrams = best->milligrams + of_bulk * bulk.milligrams;
    choice.outlay_minor = best->price_minor + of_bulk * bulk.price_minor;
    choice.at_least_minor =
        choice.least_left ? choice.outlay_minor : divided_up(Wide(milligrams) * bulk.price_minor, bulk.milligrams);
    return choice;
}

bool PackSums::reach(Whole milligrams, Whole most_steps) {
    while (!packs_.empty() && sums_.back().milligrams < milligrams + largest_) {
        if (steps() >= most_steps) return false;
        add_next();
    }
    return true;
}

void PackSums::add_next() {
    Sum next{std::numeric_limits<Whole>::max(), 0, 0};
    for (std::size_t p = 0; p < packs_.size(); ++p) {
        const Sum& before = sums_[next_[p]];
        const Sum sum{before.milligrams + packs_[p].milligrams, before.price_minor + packs_[p].price_minor, p};
        if (sum.milligrams < next.milligrams ||
            (sum.milligrams == next.milligrams && sum.price_minor < next.price_minor))
            next = sum;
    }
    for (std::size_t p = 0; p < packs_.size(); ++p)
        if (sums_[next_[p]].milligrams + packs_[p].milligrams == next.milligrams) ++next_[p];
    sums_.push_back(next);
}

std::vector<PackSums::Sum>::const_iterator PackSums::from(Whole milligrams) const {
    return std::lower_bound(sums_.begin(), sums_.end(), milligrams,
                            [](const Sum& sum, Whole least) { return sum.milligrams < least; });
}

std::vector<PackSums::Sum> PackSums::worth_having() const {
    std::vector<Sum> worth;
    Whole least_beyond = std::numeric_limits<Whole>::max();
    // NOLINTNEXTLINE(modernize-loop-convert): the other way round, and <ranges> takes long to compile
    for (auto sum = sums_.rbegin(); sum != sums_.rend(); ++sum) {
        if (sum->price_minor > least_beyond) continue;
        least_beyond = sum->price_minor;
        worth.push_back(*sum);
    }
    std::reverse(worth.begin(), worth.end());
    return worth;
}

std::vector<Whole> PackSums::counts(Whole milligrams) const {
    std::vector<Whole> counts(packs_.size(), 0);
    while (milligrams > 0) {
        const std::size_t pack = from(milligrams)->last;
        ++counts[pack];
        milligrams -= packs_[pack].milligrams;
    }
    return counts;
}

}  // namespace baitwright
