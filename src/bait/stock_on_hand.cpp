#include "bait/stock_on_hand.h"

#include <algorithm>

#include "quantities/suggestion.h"

namespace baitwright {

void StockOnHand::put(std::string_view ingredient, StockLot lot) {
    lots_[folded_name(ingredient)].push_back(lot);
}

std::vector<StockLot> StockOnHand::lots(std::string_view ingredient, const std::optional<Date>& on) const {
    const auto told = lots_.find(folded_name(ingredient));
    std::vector<StockLot> good = told != lots_.end() ? told->second
                                 : look_up_          ? look_up_(ingredient)
                                                     : std::vector<StockLot>{};
    std::erase_if(good, [&](const StockLot& lot) { return lot.best_before && lot.best_before < on; });
    std::stable_sort(good.begin(), good.end(), [](const StockLot& a, const StockLot& b) {
        if (!a.best_before || !b.best_before) return a.best_before.has_value() && !b.best_before;
        return a.best_before < b.best_before;
    });
    return good;
}

}  // namespace baitwright
