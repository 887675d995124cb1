#include "answers/money/priced_need.h"

#include <algorithm>

#include "bait/pricing.h"
#include "quantities/units.h"

namespace baitwright {

PricedIngredient::PricedIngredient(const Ingredient& ingredient, std::vector<StockLot> lots, const Currency* in)
    : sums_(packs_on_offer(ingredient, in)), elsewhere_(priced_elsewhere(ingredient, in)) {
    if (const Pack* pack = pricing_pack(ingredient, in)) {
        pricing_ = *pack;
        rate_ = *exact_cost_minor(ingredient, 1.0 * kilogram, in);
    }
    for (StockLot& lot : lots) {
        // Nothing is nothing in any currency.
        const bool other = lot.paid && lot.paid->minor() != 0 && in && !(lot.paid->currency() == *in);
        if (other && !pricing_ && !elsewhere_) elsewhere_ = {ingredient.name, *lot.paid};
        if (other) lot.paid.reset();
        lots_.push_back({lot, other});
    }
}

NeedCost PricedIngredient::cost_of(Mass need) const {
    NeedCost cost;
    std::int64_t to_buy = whole_milligrams(need);
    for (const PricedLot& lot : lots_) {
        const Mass taken = std::min(lot.mass, need - cost.from_stock);
        if (!(taken > Mass{})) continue;
        to_buy -= whole_milligrams(lot.mass);
        cost.from_stock += taken;
        cost.used_of_stock +=
            lot.paid ? static_cast<double>(lot.paid->minor()) * (taken / lot.mass) : rate_ * taken.si();
        cost.priced = cost.priced && (lot.paid || pricing_);
        cost.paid_elsewhere = cost.paid_elsewhere || lot.paid_elsewhere;
    }
    cost.from_stock = std::min(cost.from_stock, need);
    cost.packs = sums_.cheapest(to_buy);
    if (to_buy <= 0) return cost;
    cost.priced = cost.priced && !offers().empty();
    cost.used_of_bought = std::min(rate_ * (need - cost.from_stock).si(), static_cast<double>(cost.packs.outlay_minor));
    return cost;
}

}  // namespace baitwright
