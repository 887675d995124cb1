#pragma once

#include <string>
#include <vector>

#include "bait/advice_rule.h"
#include "bait/memory_shelf.h"
#include "bait/stock_on_hand.h"
#include "bait/venue.h"
#include "questions/arguments.h"

namespace baitwright {

/// What a page has open: the library it was given, the day, and what lay in the shed when it was made.
struct OpenedBank {
    MemoryShelf shelf;
    std::vector<AdviceRule> advice;
    std::vector<Venue> venues;
    Date today;
    StockOnHand have;
    Usual usual;  ///< what the person always uses

    /// What the flags say is in the shed, else what was there.
    [[nodiscard]] StockOnHand stock(const Arguments& arguments) const;
};

}  // namespace baitwright
