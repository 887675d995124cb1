#pragma once

#include <string>

#include "answers/money/price_answer.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/told.h"

namespace baitwright {

/// `command` is "price list" or "price history".
Told price_list_told(const PriceList& list);
Json price_list_json(const std::string& command, const PriceList& list);
Rows price_list_rows(const PriceList& list);

Told price_change_told(const PriceChange& change);
Json price_change_json(const PriceChange& change);
Rows price_change_rows(const PriceChange& change);

}  // namespace baitwright
