#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

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

/// What lies in the shed, as a value: whoever keeps the ledger fills it. Names match whatever their case.
class StockOnHand {
public:
    /// The mass must be above zero.
    void put(std::string_view ingredient, StockLot lot);

    /// The lots that are still good on that day, or all where none is told, the first to expire first, those without a
    /// date last.
    [[nodiscard]] std::vector<StockLot> lots(std::string_view ingredient, const std::optional<Date>& on) const;

    [[nodiscard]] bool empty() const { return lots_.empty(); }

private:
    std::map<std::string, std::vector<StockLot>> lots_;
};

}  // namespace baitwright
