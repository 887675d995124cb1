#include "answers/money/stock_reach.h"

#include <algorithm>

namespace baitwright {

StockReach::StockReach(const PackNeed& need) : lots_(need.stock) {
    for (StockedGrams& lot : lots_) lot.last_session = std::min(lot.last_session, need.shelf_life - 1);
    std::stable_sort(lots_.begin(), lots_.end(),
                     [](const StockedGrams& a, const StockedGrams& b) { return a.last_session < b.last_session; });
    const int sessions = static_cast<int>(need.grams.size());
    for (; at_ < sessions; ++at_) {
        if (usable() < need.grams[static_cast<std::size_t>(at_)]) break;
        use(need.grams[static_cast<std::size_t>(at_)]);
    }
    const bool reaches = at_ == sessions;
    if (reaches && at_ > 0) --at_;  // good in the last session is good enough
    left_ = usable();
    if (reaches)
        at_ = sessions;
    else
        used_ += left_;
}

std::int64_t StockReach::usable() const {
    std::int64_t sum = 0;
    for (const StockedGrams& lot : lots_) sum += lot.last_session >= at_ ? lot.grams : 0;
    return sum;
}

/// The first to go off first.
void StockReach::use(std::int64_t grams) {
    used_ += grams;
    for (StockedGrams& lot : lots_) {
        if (lot.last_session < at_) continue;
        const std::int64_t taken = std::min(grams, lot.grams);
        lot.grams -= taken;
        grams -= taken;
    }
}

PackPlan plan_without_buying(const PackNeed& need, const StockReach& reach) {
    PackPlan plan;
    std::int64_t stocked = 0;
    for (const StockedGrams& lot : need.stock) stocked += lot.grams;
    const bool reaches = reach.falls_short_at() == static_cast<int>(need.grams.size());
    plan.from_stock = reach.used();
    plan.left_over = stocked - reach.used();
    plan.past_best = plan.left_over - (reaches ? reach.left() : 0);  // once it falls short all that was good is used
    return plan;
}

}  // namespace baitwright
