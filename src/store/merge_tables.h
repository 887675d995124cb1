#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace baitwright {

class StoreConnection;

/// The ledger and the log of another store, attached as `other`, come into this one. Rows are known by their marks;
/// what both have stays, and where it is not the same (notes that were taken in twice, against two libraries), the one
/// whose digest is greater stands in both. All of it belongs inside a change, between `MergeTables`'s making and its
/// end.
struct RowsBrought {
    std::int64_t shed_entries = 0, log_entries = 0, sessions = 0;
    std::int64_t beliefs = 0;        ///< entries that both have, and that are believed now or are no more
    std::vector<std::string> usual;  ///< keys whose values are others now
    bool learnt = false;             ///< what was learnt is another now
};

/// Prepares for many rows: the triggers of the ledger and the log rest, and come back with `finish`.
void rest_triggers(StoreConnection& connection);
void wake_triggers(StoreConnection& connection);

/// The table `merged_entry`: entries of the other shed with their numbers here, the new ones numbered in their order
/// behind ours. Returns how many are new. A statement a row: ten million take some 10 s.
std::int64_t match_entries(StoreConnection& connection);
void bring_ledger(StoreConnection& connection, RowsBrought& brought);
void bring_log(StoreConnection& connection, RowsBrought& brought);

/// Sets of things: old versions, shops, and what is believed; what was learnt and what is usual by its last stamp.
void bring_sets(StoreConnection& connection, RowsBrought& brought);

/// The prices that ingredients had, once the library is one: what `name_now` says they are called.
void bring_prices(StoreConnection& connection);

}  // namespace baitwright
