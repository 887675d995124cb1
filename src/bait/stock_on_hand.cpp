#include "bait/stock_on_hand.h"

#include "quantities/sort_stably.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

template <class Kept>
void first_to_expire_first(std::vector<Kept>& all) {
    sort_stably(all.begin(), all.end(), [](const Kept& a, const Kept& b) {
        if (!a.best_before || !b.best_before) return a.best_before.has_value() && !b.best_before;
        return *a.best_before < *b.best_before;
    });
}

}  // namespace

void StockOnHand::put(std::string_view ingredient, StockLot lot) {
    lots_[folded_name(ingredient)].push_back(lot);
}

void StockOnHand::put(KeptMix kept) {
    kept_[folded_name(kept.of)].push_back(std::move(kept));
}

std::vector<StockLot> StockOnHand::lots(std::string_view ingredient, const std::optional<Date>& on) const {
    const auto told = lots_.find(folded_name(ingredient));
    std::vector<StockLot> good = told != lots_.end() ? told->second
                                 : look_up_          ? look_up_(ingredient)
                                                     : std::vector<StockLot>{};
    std::erase_if(good, [&](const StockLot& lot) { return lot.best_before && lot.best_before < on; });
    first_to_expire_first(good);
    return good;
}

std::vector<KeptMix> StockOnHand::kept(std::string_view mix) const {
    const auto told = kept_.find(folded_name(mix));
    std::vector<KeptMix> tubs = told != kept_.end() ? told->second
                                : look_up_kept_     ? look_up_kept_(mix)
                                                    : std::vector<KeptMix>{};
    first_to_expire_first(tubs);
    return tubs;
}

}  // namespace baitwright
