#pragma once

#include <string>
#include <vector>

#include "answers/money/price_answer.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/told.h"

namespace baitwright {

/// The sizes of its packs as they are typed, each once: "1 kg", "500 ml".
std::vector<std::string> pack_sizes_typed(const Ingredient& ingredient);

/// `command` is "price list" or "price history".
Told price_list_told(const PriceList& list);
Json price_list_json(const std::string& command, const PriceList& list);
Rows price_list_rows(const PriceList& list);

Told price_change_told(const PriceChange& change);
Json price_change_json(const PriceChange& change);
Rows price_change_rows(const PriceChange& change);

/// {size_g, size_ml, price_minor, currency, on, shop}; one of the two sizes is null, and what is not known.
Json pack_json(const std::optional<Pack>& pack);

}  // namespace baitwright
