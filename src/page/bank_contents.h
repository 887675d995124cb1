#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/advice_rule.h"
#include "bait/shelf.h"
#include "bait/stock_on_hand.h"
#include "bait/strategy.h"
#include "bait/usual.h"
#include "bait/venue.h"

namespace baitwright {

/// A strategy that a page is to carry, with the shelf on which it is complete.
struct CarriedStrategy {
    const Shelf* shelf;
    Strategy strategy;
};

/// What goes into a page beside the engine.
struct BankContents {
    std::vector<CarriedStrategy> strategies;  ///< none: all that the library has
    const Shelf* library;                     ///< is carried whole
    std::vector<Venue> venues;
    StockOnHand stock;
    std::vector<std::string> taken_home;  ///< marks of what a phone told of its shed, and the stock has in it
    Date made_on;
    std::string version;       ///< of the program
    std::optional<int> start;  ///< minutes since midnight
    int people = 1;
    const Currency* usual_currency = nullptr;  ///< what the person always uses; may be null
    std::vector<AdviceRule> advice;            ///< the rules of advice
    Usual always;                              ///< the same of pump, vessel, water and units, as it was told once
};

}  // namespace baitwright
