#pragma once

#include <string>
#include <vector>

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

/// The strategies to compare. Throws UsageError "missing-word" for fewer than two.
std::vector<TimedWord> compared_words(const Arguments& arguments);

/// Throws UsageError "twice" where two of the words mean the same strategy and the same number of sessions; `meant` is
/// what each of them means.
void refuse_twins(const std::vector<TimedWord>& words, const std::vector<std::string>& meant);

}  // namespace baitwright
