#pragma once

#include <optional>
#include <string>
#include <vector>

#include "store/shed.h"
#include "store/shed_rows.h"

/// The writing of an entry of the ledger, and what every entry must heed. All belongs inside a change.
namespace baitwright {

/// What an entry is to do to one item.
struct Change {
    ItemRow item;
    std::vector<Movement> movements;
};

/// A count that stands.
struct Counted {
    std::int64_t entry;
    Date on;
};
std::optional<Counted> last_count_of(StoreConnection& connection, std::int64_t item);

/// A count has taken in all that happened before it: throws UsageError "before-count" for an earlier day.
void refuse_before_count(StoreConnection& connection, const ItemRow& item, Date on);

/// The item of that name, made where the shed never held it. Throws UsageError "other-kind".
ItemRow item_for(StoreConnection& connection, const std::string& name, StockKind kind, Date on);

/// An empty lot like that one; its number.
std::int64_t write_lot(StoreConnection& connection, std::int64_t item, const Lot& lot);

/// Writes the entry, one movement a lot, and tells what came of it.
StockReceipt write_entry(StoreConnection& connection, StockReceipt receipt, const std::vector<Change>& changes);

/// The first column of the first row, which must be there.
std::int64_t number_of(Query&& row);

/// "1.5 g", to the milligram.
std::string exact_grams(Milligrams mass);

}  // namespace baitwright
