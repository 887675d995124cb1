#include <algorithm>

#include "answers/money/buy_packs.h"
#include "answers/money/pack_calendar.h"
#include "answers/money/pack_sums.h"
#include "quantities/fault.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

using Whole = std::int64_t;

std::vector<PackOnOffer> largest_first(std::vector<PackOnOffer> packs) {
    sort_stably(packs.begin(), packs.end(),
                [](const PackOnOffer& a, const PackOnOffer& b) { return a.milligrams > b.milligrams; });
    return packs;
}

class BulkBuyer {
public:
    BulkBuyer(const PackNeed& need, const PackCalendar& calendar)
        : calendar_(calendar), sums_(largest_first(need.packs)), plan_(calendar.without_buying()) {}

    PackPlan run() {
        RunsShort at = calendar_.stock();
        while (at.session < calendar_.sessions()) {
            const Whole lacking = calendar_.need_at(at.session) - at.left;
            if (to_come_.milligrams < lacking) to_come_ = sums_.cheapest(calendar_.window(at.session) - at.left);
            at = calendar_.after(at.session, buy(at.session, lacking) - lacking);
            plan_.past_best += at.lost;
        }
        plan_.left_over += plan_.bought - calendar_.to_buy();
        const PackChoice at_once = sums_.cheapest(calendar_.to_buy());
        plan_.at_least_minor = at_once.at_least_minor;
        plan_.least_left = at_once.least_left && plan_.proven() && plan_.bought <= at_once.milligrams;
        return plan_;
    }

private:
    /// Of what is to come so much that it reaches, and little more: the rest is bought later.
    Whole buy(int session, Whole lacking) {
        const std::vector<PackOnOffer>& packs = sums_.packs();
        std::vector<Whole> counts(packs.size(), 0);
        Whole bought = 0;
        const auto take = [&](std::size_t pack, Whole count) {
            count = std::min(count, to_come_.counts[pack]);
            to_come_.counts[pack] -= count;
            counts[pack] += count;
            bought += count * packs[pack].milligrams;
            plan_.outlay_minor += count * packs[pack].price_minor;
        };
        for (std::size_t pack = 0; pack < packs.size(); ++pack) take(pack, (lacking - bought) / packs[pack].milligrams);
        for (std::size_t pack = packs.size(); pack-- > 0 && bought < lacking;) take(pack, 1);
        to_come_.milligrams -= bought;
        plan_.bought += bought;
        for (PackBought& each : packs_bought(packs, counts, session)) plan_.purchases.push_back(std::move(each));
        return bought;
    }

    const PackCalendar& calendar_;
    PackSums sums_;
    PackChoice to_come_;  // chosen and not bought yet
    PackPlan plan_;
};

}  // namespace

std::optional<PackPlan> bulk_packs(const PackNeed& need) {
    const PackCalendar calendar(need);
    if (calendar.stock_reaches()) return calendar.without_buying();
    if (need.packs.empty()) return std::nullopt;
    PackPlan plan = BulkBuyer(need, calendar).run();
    if (need.most_left_over && plan.bought - calendar.to_buy() > *need.most_left_over)
        throw InputError("too-many-ways",
                         "there are too many ways to buy that much to find one that leaves so little over",
                         "ask for fewer sessions or fewer people at once, or allow more to be left over");
    return plan;
}

}  // namespace baitwright
