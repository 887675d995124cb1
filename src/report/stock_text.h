#pragma once

#include <string>

#include "answers/shared/stock_answer.h"

namespace baitwright {

/// What is in the shed, lots in the order in which they are to be used.
std::string shed_text(const ShedAnswer& answer);

/// What an entry did, in a sentence, and lot by lot where there are several.
std::string stock_change_text(const StockChangeAnswer& answer);

/// That a mix was taken out of the shed.
std::string booked_text(const StockReceipt& receipt);

std::string stock_history_text(const StockHistory& history);

}  // namespace baitwright
