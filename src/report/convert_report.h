#pragma once

#include "answers/money/convert_prices.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/told.h"

namespace baitwright {

Told conversion_told(const PriceConversion& conversion);
Json conversion_json(const PriceConversion& conversion);
Rows conversion_rows(const PriceConversion& conversion);

/// "\u00a31.00 is \u20ac1.17": what the rate says, with at least the digits of the currency.
std::string rate_words(const Currency& from, const Currency& to, double rate);

}  // namespace baitwright
