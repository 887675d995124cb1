#pragma once

#include <string>

#include "answers/money/cost_strategy.h"
#include "cli/command.h"
#include "questions/cost_question.h"

namespace baitwright {

/// What is in the shed, in place of what the store's holds.
Flag have_flag();

/// The flags of the commands that say what strategies cost.
std::vector<Flag> cost_flags();

/// What is in the shed: what the flags say, else what the store's shed holds when it is asked; nothing with
/// --empty-shed or a library folder.
StockOnHand stock_on_hand(const Arguments& arguments, const Shelf& shelf, const Surroundings& around);

/// Writes the picture where `--plot` asks for one; says so, for a person, or nothing.
std::string write_plot(const Arguments& arguments, const std::vector<StrategyCost>& costs);

}  // namespace baitwright
