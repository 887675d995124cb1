#pragma once

#include <optional>
#include <vector>

#include "answers/money/cheapest_packs.h"
#include "bait/ingredient.h"
#include "bait/stock_on_hand.h"

namespace baitwright {

/// What a need of one ingredient costs: from the shed first, the first to expire first, then in whole packs.
struct NeedCost {
    bool priced = true;  ///< false where something of it has no price; then its money means nothing
    Mass from_stock;
    double used_of_stock = 0, used_of_bought = 0;  ///< minor units, not whole
    PackChoice packs;                              ///< in the order of `offers`
};

/// An ingredient with what it can be bought for and what lies in the shed of it.
class PricedIngredient {
public:
    /// `rate` is the price by the gram of `pricing_pack`; the same for stock whose price nobody knows.
    PricedIngredient(const Ingredient& ingredient, std::vector<StockLot> lots);

    /// Use is priced at the rate, bought packs never above what is paid for them, so that using more never costs less
    /// and what is used never costs more than is paid.
    [[nodiscard]] NeedCost cost_of(Mass need) const;
    [[nodiscard]] const std::vector<Pack>& offers() const { return offers_; }
    [[nodiscard]] const std::optional<Pack>& pricing() const { return pricing_; }
    /// The currency of its packs and of its stock; null where it has no price at all.
    [[nodiscard]] const Currency* currency() const { return currency_; }

private:
    [[nodiscard]] double rate_cost(Mass mass) const { return rate_.value_or(0) * mass.si(); }

    std::vector<StockLot> lots_;
    std::vector<Pack> offers_;
    std::vector<PackOffer> packs_;
    std::optional<Pack> pricing_;
    std::optional<double> rate_;  // minor units a kilogram
    const Currency* currency_ = nullptr;
};

}  // namespace baitwright
