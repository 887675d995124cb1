#pragma once

#include <string>

#include "answers/money/cost_request.h"
#include "bait/shelf.h"
#include "bait/stock_on_hand.h"
#include "questions/arguments.h"

namespace baitwright {

/// What if? As the flags say. `today` is where --on does not say otherwise; the times are the words' own
/// (`timed_word`). Throws UsageError, naming the flag.
CostRequest cost_request(const Arguments& arguments, Date today);

/// What --have says is in the shed. Throws UsageError, naming the flag.
StockOnHand stock_told(const Arguments& arguments, const Shelf& shelf);

/// "open carpet=3": a strategy, three sessions of it.
struct TimedWord {
    std::string strategy;
    int times = 1;
};
TimedWord timed_word(const std::string& word);

}  // namespace baitwright
