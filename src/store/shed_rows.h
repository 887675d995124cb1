#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/stock.h"
#include "store/query.h"

/// Rows of the shed's tables as records. Words that mean nothing can only come from damage.
namespace baitwright {

/// A row of `stock_item`.
struct ItemRow {
    std::int64_t id = 0;
    std::string name;
    StockKind kind = StockKind::ingredient;
    Date last_on;  ///< of all that ever happened to it
    Milligrams left;
};

std::optional<ItemRow> read_item(StoreConnection& connection, std::string_view name);
ItemRow read_item(StoreConnection& connection, std::int64_t id);

/// Those that hold something, first to be used first.
std::vector<Lot> read_lots(StoreConnection& connection, std::int64_t item);
Lot read_lot(StoreConnection& connection, std::int64_t id);

Date date_in(const StoreConnection& connection, const Query& row, int column);
Happening happening_in(const StoreConnection& connection, const Query& row, int column);

}  // namespace baitwright
