#include "answers/money/priced_need.h"

#include <algorithm>

#include "bait/pricing.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// What rounding may leave of a need that the shed meets.
constexpr Mass dust = 1e-6 * gram;

/// The one currency of an ingredient's prices. Throws InputError where there are two.
void take_currency(const Currency*& currency, const Money& money, const std::string& name) {
    if (currency && !(*currency == money.currency()))
        throw InputError("mixed-currencies",
                         "'" + name + "' is priced both in " + std::string(currency->code) + " and in " +
                             std::string(money.currency().code),
                         "price everything in one currency");
    currency = &money.currency();
}

}  // namespace

PricedIngredient::PricedIngredient(const Ingredient& ingredient, std::vector<StockLot> lots)
    : lots_(std::move(lots)), offers_(offered_packs(ingredient)) {
    for (const Pack& pack : offers_) {
        take_currency(currency_, *pack.price, ingredient.name);
        packs_.push_back({mass_in(pack, ingredient), pack.price->minor()});
    }
    for (const StockLot& lot : lots_)
        if (lot.paid) take_currency(currency_, *lot.paid, ingredient.name);
    if (const Pack* pack = pricing_pack(ingredient)) {
        pricing_ = *pack;
        rate_ = *exact_cost_minor(ingredient, 1.0 * kilogram);
    }
}

NeedCost PricedIngredient::cost_of(Mass need) const {
    NeedCost cost;
    for (const StockLot& lot : lots_) {
        const Mass taken = std::min(lot.mass, need - cost.from_stock);
        if (!(taken > Mass{})) continue;
        cost.from_stock += taken;
        if (lot.paid)
            cost.used_of_stock += static_cast<double>(lot.paid->minor()) * (taken / lot.mass);
        else
            cost.used_of_stock += rate_cost(taken);
        cost.priced = cost.priced && (lot.paid || rate_);
    }
    cost.from_stock = std::min(cost.from_stock, need);
    const Mass to_buy = need - cost.from_stock;
    cost.packs = cheapest_packs(packs_, to_buy);
    if (!(to_buy > dust)) return cost;
    cost.priced = cost.priced && !packs_.empty();
    cost.used_of_bought = std::min(rate_cost(to_buy), static_cast<double>(cost.packs.outlay_minor));
    return cost;
}

}  // namespace baitwright
