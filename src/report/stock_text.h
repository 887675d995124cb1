#pragma once

#include <string>

#include "answers/shared/stock_answer.h"
#include "report/told.h"

namespace baitwright {

/// What is in the shed, lots in the order in which they are to be used.
Told shed_told(const ShedAnswer& answer);

/// What an entry did, in a sentence, and lot by lot where there are several.
Told stock_change_told(const StockChangeAnswer& answer);

/// What an entry of one thing did, in a sentence: "brown crumb: 400 g out; 600 g left (entry 4)".
std::string receipt_sentence(const StockReceipt& receipt);

/// That a mix was taken out of the shed.
std::string booked_text(const StockReceipt& receipt);

Told stock_history_told(const StockHistory& history);

}  // namespace baitwright
