#pragma once

#include <string>

#include "questions/stock_amount.h"
#include "store/store.h"

namespace baitwright {

/// Throws NotFound.
StockName stock_name(const std::string& word, Store& store);
/// Whether a word names something of the kind.
bool is_stock_name(const std::string& word, Store& store);

}  // namespace baitwright
