#include "answers/money/bulk_packs.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "answers/money/cheapest_packs.h"
#include "answers/money/pack_calendar.h"
#include "answers/money/stock_reach.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

// NOLINTNEXTLINE(modernize-use-using): __extension__ goes with a typedef alone
__extension__ typedef __int128 WideGrams;  // grams times pence

/// The packs of one ingredient as `cheapest_packs` takes them.
class BulkOffers {
public:
    explicit BulkOffers(const std::vector<PackOnSale>& packs) : packs_(packs) {
        for (const PackOnSale& pack : packs)
            offers_.push_back({static_cast<double>(pack.grams) * gram, pack.price_minor});
    }

    [[nodiscard]] PackChoice cheapest(std::int64_t grams) const {
        return cheapest_packs(offers_, static_cast<double>(grams) * gram, few_steps);
    }

    /// By the pack that is cheapest by the gram, were it sold by the gram.
    [[nodiscard]] std::int64_t least_outlay(std::int64_t grams) const {
        const auto cheapest =
            std::min_element(packs_.begin(), packs_.end(), [](const PackOnSale& a, const PackOnSale& b) {
                return WideGrams(a.price_minor) * b.grams < WideGrams(b.price_minor) * a.grams;
            });
        return static_cast<std::int64_t>((WideGrams(grams) * cheapest->price_minor + cheapest->grams - 1) /
                                         cheapest->grams);
    }

private:
    static constexpr std::int64_t few_steps = 100000;

    const std::vector<PackOnSale>& packs_;
    std::vector<PackOffer> offers_;
};

class BulkBuyer {
public:
    explicit BulkBuyer(const PackNeed& need) : need_(need), calendar_(need), offers_(need.packs) {
        for (std::size_t i = 0; i < need.packs.size(); ++i) largest_first_.push_back(i);
        std::stable_sort(largest_first_.begin(), largest_first_.end(),
                         [&](std::size_t a, std::size_t b) { return need.packs[a].grams > need.packs[b].grams; });
    }

    PackPlan run(const StockReach& reach) {
        plan_ = plan_without_buying(need_, reach);
        RunsShort at{reach.falls_short_at(), reach.left()};
        while (at.session < calendar_.sessions()) {
            if (to_come_ < calendar_.need_at(at.session) - at.left) choose(calendar_.window(at.session) - at.left);
            const std::int64_t bought = buy(at.session, calendar_.need_at(at.session) - at.left);
            at = calendar_.after(at.session, at.left + bought - calendar_.need_at(at.session));
            plan_.past_best += at.lost;
        }
        const std::int64_t needed =
            std::accumulate(need_.grams.begin(), need_.grams.end(), std::int64_t{0}) - plan_.from_stock;
        plan_.left_over += plan_.bought - needed;
        bound(needed);
        return plan_;
    }

private:
    /// What is to be bought from here, over and above what still is to come.
    void choose(std::int64_t grams) {
        counts_ = offers_.cheapest(grams).counts;
        to_come_ = 0;
        for (std::size_t i = 0; i < counts_.size(); ++i) to_come_ += counts_[i] * need_.packs[i].grams;
    }

    void take(int session, std::size_t pack, std::int64_t count) {
        if (count <= 0) return;
        counts_[pack] -= count;
        to_come_ -= count * need_.packs[pack].grams;
        plan_.bought += count * need_.packs[pack].grams;
        plan_.outlay_minor += count * need_.packs[pack].price_minor;
        const auto same = std::find_if(
            plan_.purchases.begin(), plan_.purchases.end(),
            [&](const PackPurchase& purchase) { return purchase.session == session && purchase.pack == pack; });
        if (same == plan_.purchases.end())
            plan_.purchases.push_back({session, pack, count});
        else
            same->count += count;
    }

    /// Of what was chosen so much that it reaches, and little more: the rest is bought later.
    std::int64_t buy(int session, std::int64_t grams) {
        const std::int64_t before = plan_.bought;
        for (const std::size_t pack : largest_first_)
            take(session, pack, std::min(counts_[pack], (grams - (plan_.bought - before)) / need_.packs[pack].grams));
        // NOLINTNEXTLINE(modernize-loop-convert): the other way round, and <ranges> takes long to compile
        for (auto pack = largest_first_.rbegin(); pack != largest_first_.rend(); ++pack)
            if (plan_.bought - before < grams && counts_[*pack] > 0) take(session, *pack, 1);
        return plan_.bought - before;
    }

    void bound(std::int64_t needed) {
        const PackChoice at_once = offers_.cheapest(needed);
        plan_.at_least_minor = at_once.proven ? at_once.outlay_minor : offers_.least_outlay(needed);
        plan_.least_left = at_once.proven && plan_.proven() && plan_.bought <= std::llround(at_once.bought.in(gram));
    }

    const PackNeed& need_;
    PackCalendar calendar_;
    BulkOffers offers_;
    std::vector<std::size_t> largest_first_;
    std::vector<std::int64_t> counts_;  // chosen and not bought yet
    std::int64_t to_come_ = 0;          // grams of those
    PackPlan plan_;
};

}  // namespace

std::optional<PackPlan> bulk_packs(const PackNeed& need) {
    const StockReach reach(need);
    if (reach.falls_short_at() == static_cast<int>(need.grams.size())) return plan_without_buying(need, reach);
    if (need.packs.empty()) return std::nullopt;
    PackPlan plan = BulkBuyer(need).run(reach);
    const std::int64_t needed = std::accumulate(need.grams.begin(), need.grams.end(), std::int64_t{0});
    if (need.most_left_over && plan.bought + plan.from_stock - needed > *need.most_left_over)
        throw InputError("too-many-ways",
                         "there are too many ways to buy that much to find one that leaves so little over",
                         "ask for fewer sessions or fewer people at once, or allow more to be left over");
    return plan;
}

}  // namespace baitwright
