#include "bait/stock_on_hand.h"

#include <algorithm>

#include "quantities/suggestion.h"

namespace baitwright {

void StockOnHand::put(std::string_view ingredient, StockLot lot) {
    lots_[folded_name(ingredient)].push_back(std::move(lot));
}

std::vector<StockLot> StockOnHand::lots(std::string_view ingredient, const std::optional<Date>& on) const {
    const auto found = lots_.find(folded_name(ingredient));
    if (found == lots_.end()) return {};
    std::vector<StockLot> good;
    for (const StockLot& lot : found->second)
        if (!lot.best_before || lot.best_before >= on) good.push_back(lot);
    std::stable_sort(good.begin(), good.end(), [](const StockLot& a, const StockLot& b) {
        if (!a.best_before || !b.best_before) return a.best_before.has_value() && !b.best_before;
        return a.best_before < b.best_before;
    });
    return good;
}

}  // namespace baitwright
