#pragma once

#include <string>

#include "answers/shared/stock_answer.h"
#include "report/json.h"
#include "report/rows.h"

/// The shed as JSON and as rows for a spreadsheet; masses unrounded.
namespace baitwright {

Json shed_json(const ShedAnswer& answer);
Rows shed_rows(const ShedAnswer& answer);

/// `command` is the command's name: "stock buy".
Json stock_change_json(const std::string& command, const StockChangeAnswer& answer);
Rows stock_change_rows(const StockChangeAnswer& answer);

/// The entry by itself, for an answer that it is part of.
Json receipt_json(const StockReceipt& receipt);

Json stock_history_json(const StockHistory& history);
Rows stock_history_rows(const StockHistory& history);

}  // namespace baitwright
