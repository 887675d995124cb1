#include "answers/money/cheapest_packs.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "quantities/units.h"

namespace baitwright {

namespace {

using Whole = std::int64_t;
// NOLINTNEXTLINE(modernize-use-using): __extension__ goes with a typedef alone
__extension__ typedef __int128 Wide;  // milligrams times pence

Whole milligrams(Mass mass) {
    return static_cast<Whole>(
        std::floor(mass.in(gram)*1000 + 1e-6));  // downwards: many packs hold no less than they count for
}

Whole divided_up(Wide value, Wide by) {
    return static_cast<Whole>((value + by - 1) / by);
}

struct Item {
    Whole size, price;
    std::size_t offer;
};

/// Tries counts of every item but the first, which is the cheapest by the gram and fills up the rest.
class Search {
public:
    Search(std::vector<Item> items, Whole need, Whole most_steps)
        : items_(std::move(items)), counts_(items_.size(), 0), need_(need), most_steps_(most_steps) {}

    void run() {
        settle(need_, 0);
        descend(1, need_, 0);
    }

    [[nodiscard]] const std::vector<Whole>& best() const { return best_; }
    [[nodiscard]] Whole outlay() const { return outlay_; }
    [[nodiscard]] Whole bought() const { return bought_; }
    [[nodiscard]] bool cut_short() const { return steps_ > most_steps_; }

private:
    /// The rest in packs of the first item.
    void settle(Whole rest, Whole cost) {
        const Item& first = items_.front();
        counts_[0] = rest > 0 ? divided_up(rest, first.size) : 0;
        const Whole outlay = cost + counts_[0] * first.price, bought = need_ - rest + counts_[0] * first.size;
        if (!best_.empty() && (outlay > outlay_ || (outlay == outlay_ && bought >= bought_))) return;
        best_ = counts_;
        outlay_ = outlay;
        bought_ = bought;
    }

    void descend(std::size_t i, Whole rest, Whole cost) {
        if (++steps_ > most_steps_) return;
        if (i == items_.size() || rest <= 0) return settle(rest, cost);
        const Item& first = items_.front();
        const Item& item = items_[i];
        const Whole never_more = first.size / std::gcd(first.size, item.size) - 1;
        const Whole enough = divided_up(rest, item.size);
        for (Whole n = 0; n <= std::min(never_more, enough); ++n) {
            const Whole left = rest - n * item.size, paid = cost + n * item.price;
            const Whole least = left > 0 ? divided_up(Wide(left) * first.price, first.size) : 0;
            if (paid + least > outlay_) break;  // each one more costs no less by the gram
            counts_[i] = n;
            descend(i + 1, left, paid);
        }
        counts_[i] = 0;
    }

    std::vector<Item> items_;
    std::vector<Whole> counts_, best_;
    Whole need_, most_steps_, outlay_ = 0, bought_ = 0, steps_ = 0;
};

std::vector<Item> items_of(const std::vector<PackOffer>& offers) {
    std::vector<Item> items;
    for (std::size_t i = 0; i < offers.size(); ++i)
        items.push_back({std::max<Whole>(1, milligrams(offers[i].size)), offers[i].price_minor, i});
    const auto cheapest = std::min_element(items.begin(), items.end(), [](const Item& a, const Item& b) {
        return Wide(a.price) * b.size < Wide(b.price) * a.size;
    });
    std::iter_swap(items.begin(), cheapest);
    std::stable_sort(items.begin() + 1, items.end(), [](const Item& a, const Item& b) { return a.size > b.size; });
    return items;
}

}  // namespace

PackChoice cheapest_packs(const std::vector<PackOffer>& offers, Mass need, std::int64_t most_steps) {
    PackChoice choice;
    choice.counts.assign(offers.size(), 0);
    const auto wanted = static_cast<Whole>(std::ceil(need.in(gram)*1000 - 1e-6));
    if (offers.empty() || wanted <= 0) return choice;
    const std::vector<Item> items = items_of(offers);
    Search search(items, wanted, most_steps);
    search.run();
    for (std::size_t i = 0; i < items.size(); ++i) {
        choice.counts[items[i].offer] = search.best()[i];
        choice.bought += static_cast<double>(search.best()[i]) * offers[items[i].offer].size;
    }
    choice.outlay_minor = search.outlay();
    choice.proven = !search.cut_short();
    return choice;
}

}  // namespace baitwright
