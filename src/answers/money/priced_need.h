#pragma once

#include <optional>
#include <vector>

#include "answers/money/pack_sums.h"
#include "bait/one_currency.h"
#include "bait/stock_on_hand.h"

namespace baitwright {

/// What a need of one ingredient costs: from the shed first, the first to expire first, then in whole packs.
struct NeedCost {
    bool priced = true;  ///< false where something of it has no price; then its money means nothing
    Mass from_stock;
    double used_of_stock = 0, used_of_bought = 0;  ///< minor units, not whole
    bool paid_elsewhere = false;  ///< stock was paid for in another currency, and is reckoned at the rate
    PackChoice packs;
};

/// An ingredient with what it can be bought for and what lies in the shed of it.
class PricedIngredient {
public:
    /// The rate is the price by the gram of `pricing_pack`; the same for stock whose price nobody knows. Prices in
    /// another currency than that count as not known; `in` is null where nothing at all is priced.
    PricedIngredient(const Ingredient& ingredient, std::vector<StockLot> lots, const Currency* in);

    /// Use is priced at the rate, bought packs never above what is paid for them, so that using more never costs less
    /// and what is used never costs more than is paid.
    [[nodiscard]] NeedCost cost_of(Mass need) const;
    [[nodiscard]] const std::vector<PackOnOffer>& offers() const { return sums_.packs(); }
    [[nodiscard]] const std::optional<Pack>& pricing() const { return pricing_; }
    /// The price that it has in another currency, where it has none in this one.
    [[nodiscard]] const std::optional<PricedElsewhere>& elsewhere() const { return elsewhere_; }

private:
    struct PricedLot : StockLot {
        bool paid_elsewhere = false;
    };
    std::vector<PricedLot> lots_;
    mutable PackSums sums_;  // worked out as far as was asked
    std::optional<Pack> pricing_;
    double rate_ = 0;  // minor units a kilogram; only where there is a pricing pack
    std::optional<PricedElsewhere> elsewhere_;
};

}  // namespace baitwright
