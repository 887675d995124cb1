#include <algorithm>
#include <cstdint>
#include <vector>

#include "store/merge_tables.h"
#include "store/query.h"

namespace baitwright {

namespace {

constexpr const char* make_table =
    "CREATE TEMP TABLE merged_entry (other_id INTEGER PRIMARY KEY, id INTEGER NOT NULL, is_new INTEGER NOT NULL)";
// Both read an index alone, from one end to the other.
constexpr const char* select_ours = "SELECT mark, id FROM main.stock_entry ORDER BY mark";
constexpr const char* select_theirs = "SELECT mark, id FROM other.stock_entry ORDER BY mark";
constexpr const char* select_last = "SELECT ifnull(max(id), 0) FROM main.stock_entry";
constexpr const char* insert_pair = "INSERT INTO temp.merged_entry VALUES (?1, ?2, ?3)";

struct Pair {
    std::int64_t theirs = 0, ours = 0;  ///< ours is 0 where the entry is not here yet
};

/// Every entry of the other store with the one of the same mark here, in the order of the other's numbers.
std::vector<Pair> pairs_by_mark(StoreConnection& connection) {
    std::vector<Pair> pairs;
    Query ours(connection, select_ours), theirs(connection, select_theirs);
    bool is_left = ours.next();
    while (theirs.next()) {
        while (is_left && ours.bytes(0) < theirs.bytes(0)) is_left = ours.next();
        const bool is_same = is_left && ours.bytes(0) == theirs.bytes(0);
        pairs.push_back({theirs.whole(1), is_same ? ours.whole(1) : 0});
    }
    std::sort(pairs.begin(), pairs.end(), [](const Pair& a, const Pair& b) { return a.theirs < b.theirs; });
    return pairs;
}

}  // namespace

std::int64_t match_entries(StoreConnection& connection) {
    connection.run_once(make_table);
    Query last_row(connection, select_last);
    last_row.next();
    const std::int64_t last = last_row.whole(0);
    std::int64_t coming = 0;
    for (const Pair& pair : pairs_by_mark(connection)) {
        const bool is_new = pair.ours == 0;
        Query(connection, insert_pair, pair.theirs, is_new ? last + ++coming : pair.ours, std::int64_t{is_new}).run();
    }
    return coming;
}

}  // namespace baitwright
