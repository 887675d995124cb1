#pragma once

#include <string>

#include "answers/cost_strategy.h"
#include "cli/command.h"

namespace baitwright {

/// The flags of the commands that say what strategies cost, and the request they make. The times are the words' own.
std::vector<Flag> cost_flags();
CostRequest cost_request(const Arguments& arguments, const Surroundings& around);

/// What is in the shed of what is needed: what the flags say, else what the store's shed holds; nothing with --empty-shed or a library folder.
StockOnHand stock_on_hand(const Arguments& arguments, const Shelf& shelf, const Surroundings& around,
                          const std::vector<IngredientNeed>& needs);

/// Adds those whose ingredient is not among them yet.
void add_unlisted(std::vector<IngredientNeed>& needs, const std::vector<IngredientNeed>& more);

/// "open carpet=3": a strategy, three sessions of it.
struct TimedWord {
    std::string strategy;
    int times = 1;
};
TimedWord timed_word(const std::string& word);

/// Writes the picture where `--plot` asks for one; says so, for a person, or nothing.
std::string write_plot(const Arguments& arguments, const std::vector<StrategyCost>& costs);

}  // namespace baitwright
