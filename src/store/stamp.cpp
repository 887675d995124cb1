#include "store/stamp.h"

#include "store/query.h"

namespace baitwright {

namespace {

constexpr const char* advance_clock =
    "UPDATE meta SET value = CAST(CAST(value AS INTEGER) + 1 AS TEXT) WHERE key = 'clock'"
    " RETURNING CAST(value AS INTEGER)";
constexpr const char* put_stamp =
    "INSERT INTO stamp VALUES (?1, ?2, ?3, 0) ON CONFLICT (kind, folded) DO UPDATE SET clock = excluded.clock";
constexpr const char* put_stamp_gone = "INSERT OR REPLACE INTO stamp VALUES (?1, ?2, ?3, 0)";
constexpr const char* forget_packs_stamp =
    "DELETE FROM stamp WHERE ?1 = 'ingredient' AND kind = 'packs' AND folded = ?2";
constexpr const char* put_new_stamp = "INSERT OR REPLACE INTO stamp VALUES (?1, ?2, ?3, ?3)";

std::int64_t next_clock(StoreConnection& connection) {
    Query row(connection, advance_clock);
    if (!row.next()) throw connection.damaged("a clock that is missing");
    const std::int64_t clock = row.whole(0);
    row.next();  // to its end, so that it is done
    return clock;
}

}  // namespace

void stamp(StoreConnection& connection, std::string_view kind, std::string_view folded) {
    Query(connection, put_stamp, kind, folded, next_clock(connection)).run();
}

void stamp_gone(StoreConnection& connection, std::string_view kind, std::string_view folded) {
    Query(connection, put_stamp_gone, kind, folded, next_clock(connection)).run();
    Query(connection, forget_packs_stamp, kind, folded).run();
}

void stamp_new(StoreConnection& connection, std::string_view kind, std::string_view folded) {
    Query(connection, put_new_stamp, kind, folded, next_clock(connection)).run();
}

}  // namespace baitwright
