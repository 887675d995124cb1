#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "bait/kept_mix.h"
#include "quantities/date.h"
#include "quantities/money.h"
#include "quantities/quantity.h"

namespace baitwright {

/// So much of an ingredient, bought at one time: it has one age and one price.
struct StockLot {
    Mass mass;
    std::optional<Date> best_before = {};
    std::optional<Money> paid = {};  ///< for all of it; 0 for what was paid for before, such as mix from the freezer
};

/// What lies in the shed, damp mix that was put by too: as it was told, or asked of whoever keeps the ledger when it is
/// needed. Names match whatever their case.
class StockOnHand {
public:
    /// All lots of an ingredient.
    using LookUp = std::function<std::vector<StockLot>(std::string_view ingredient)>;

    /// All tubs of a mix.
    using LookUpKept = std::function<std::vector<KeptMix>(std::string_view mix)>;

    StockOnHand() = default;
    explicit StockOnHand(LookUp look_up, LookUpKept look_up_kept = {})
        : look_up_(std::move(look_up)), look_up_kept_(std::move(look_up_kept)) {}

    /// The mass must be above zero.
    void put(std::string_view ingredient, StockLot lot);
    /// The same for a tub of damp mix.
    void put(KeptMix kept);

    /// The lots that are still good on that day, or all where none is told, the first to expire first, those without a
    /// date last.
    [[nodiscard]] std::vector<StockLot> lots(std::string_view ingredient, const std::optional<Date>& on) const;

    /// The tubs of a mix that was put by, good or not, the first to expire first, those without a date last.
    [[nodiscard]] std::vector<KeptMix> kept(std::string_view mix) const;

private:
    LookUp look_up_;  // empty where the lots were told
    LookUpKept look_up_kept_;
    std::map<std::string, std::vector<StockLot>> lots_;
    std::map<std::string, std::vector<KeptMix>> kept_;
};

}  // namespace baitwright
