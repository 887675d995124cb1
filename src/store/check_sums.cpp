#include <array>
#include <string>
#include <string_view>

#include "bait/stock_mass.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"
#include "store/query.h"
#include "store/shed_entry.h"
#include "store/store_check.h"

namespace baitwright {

namespace {

// A lot's movements come to what is left of it, or to what was used beyond it, below zero. Sums are reckoned in
// doubles, which are exact to 9e15: a sum of whole numbers could overflow where some are none of a shed.
constexpr const char* select_wrong_lots =
    "SELECT i.name, l.left_mg - l.over_mg, ifnull(s.sum, 0) FROM stock_lot l JOIN stock_item i ON i.id = l.item_id"
    " LEFT JOIN (SELECT lot_id, CAST(total(milligrams) AS INTEGER) AS sum FROM stock_movement GROUP BY +lot_id) s"
    " ON s.lot_id = l.id WHERE l.left_mg <> max(0, ifnull(s.sum, 0)) OR l.over_mg <> max(0, -ifnull(s.sum, 0))";
constexpr const char* select_wrong_items =
    "SELECT i.name, i.left_mg - i.over_mg, ifnull(s.left_sum - s.over_sum, 0) FROM stock_item i LEFT JOIN"
    " (SELECT item_id, CAST(total(left_mg) AS INTEGER) AS left_sum, CAST(total(over_mg) AS INTEGER) AS over_sum"
    " FROM stock_lot GROUP BY +item_id) s ON s.item_id = i.id"
    " WHERE i.left_mg <> ifnull(s.left_sum, 0) OR i.over_mg <> ifnull(s.over_sum, 0)";
constexpr const char* mend_lots =
    "UPDATE stock_lot SET left_mg = max(0, s.sum), over_mg = max(0, -s.sum) FROM (SELECT l.id AS lot,"
    " ifnull((SELECT sum(m.milligrams) FROM stock_movement m WHERE m.lot_id = l.id), 0) AS sum FROM stock_lot l) s"
    " WHERE s.lot = stock_lot.id AND (left_mg <> max(0, s.sum) OR over_mg <> max(0, -s.sum))";
constexpr const char* mend_items =
    "UPDATE stock_item SET left_mg = s.left_sum, over_mg = s.over_sum FROM (SELECT i.id AS item,"
    " ifnull((SELECT sum(left_mg) FROM stock_lot l WHERE l.item_id = i.id), 0) AS left_sum,"
    " ifnull((SELECT sum(over_mg) FROM stock_lot l WHERE l.item_id = i.id), 0) AS over_sum FROM stock_item i) s"
    " WHERE s.item = stock_item.id AND (left_mg <> s.left_sum OR over_mg <> s.over_sum)";
constexpr const char* stop_counting = "DROP TRIGGER IF EXISTS stock_lot_counts";

void add_wrong_sums(Query&& rows, const char* whose, StoreFindings& findings) {
    std::size_t count = 0;
    for (; rows.next(); ++count)
        if (count < StoreFindings::most_alike)
            findings.add({"wrong-balance",
                          std::string(whose) + " " + in_quotes(rows.name(0)) + " is said to be " +
                              exact_grams({rows.whole(1)}) + ", and what came in and went out makes " +
                              exact_grams({rows.whole(2)}),
                          put_right_todo, true});
    if (count > StoreFindings::most_alike) findings.add_untold(count - StoreFindings::most_alike);
}

// Sums of numbers that are none overflow: those are found first.
constexpr const char* select_impossible_movement =
    "SELECT 1 FROM stock_movement WHERE milligrams NOT BETWEEN -10000000000000 AND 10000000000000 LIMIT 1";

bool can_be_summed(StoreConnection& connection) {
    return !Query(connection, select_impossible_movement).next();
}

/// `sql` gives marks, or how many are wrong.
struct MarkCheck {
    const char* sql;
    const char* one;
    const char* several;
};

#define BAITWRIGHT_OTHER_MARK(table)               \
    "SELECT count(*) FROM " table " e JOIN " table \
    " u ON u.id = e.undoes WHERE e.mark <> substr(u.mark, 17) || substr(u.mark, 1, 16)"
#define BAITWRIGHT_NO_STAMP(table, kind)       \
    "SELECT count(*) FROM " table              \
    " t WHERE owner = 'person' AND NOT EXISTS" \
    " (SELECT 1 FROM stamp s WHERE s.kind = " kind " AND s.folded = t.folded)"

constexpr auto marked_rows = std::to_array<MarkCheck>(
    {{"SELECT mark FROM stock_lot", "lot of the shed has no mark", "lots of the shed have no mark"},
     {"SELECT mark FROM stock_entry", "entry of the shed has no mark", "entries of the shed have no mark"},
     {"SELECT mark FROM log_entry", "entry of the log has no mark", "entries of the log have no mark"}});
constexpr auto mark_checks = std::to_array<MarkCheck>(
    {{BAITWRIGHT_OTHER_MARK("stock_entry"), "undoing in the shed has not the mark of what it takes back",
      "undoings in the shed have not the marks of what they take back"},
     {BAITWRIGHT_OTHER_MARK("log_entry"), "undoing in the log has not the mark of what it takes back",
      "undoings in the log have not the marks of what they take back"},
     {BAITWRIGHT_NO_STAMP("ingredient", "'ingredient'"), "ingredient of yours has no stamp",
      "ingredients of yours have no stamp"},
     {BAITWRIGHT_NO_STAMP("recipe", "'mix'"), "mix of yours has no stamp", "mixes of yours have no stamp"},
     {BAITWRIGHT_NO_STAMP("strategy", "'strategy'"), "strategy of yours has no stamp",
      "strategies of yours have no stamp"},
     {BAITWRIGHT_NO_STAMP("feel", "'feel'"), "feel of yours has no stamp", "feels of yours have no stamp"},
     {"SELECT count(*) FROM stamp WHERE clock NOT BETWEEN 0 AND 4611686018427387903 OR since NOT BETWEEN 0 AND clock",
      "stamp tells no time", "stamps tell no time"},
     {"SELECT count(*) FROM (SELECT 1) WHERE NOT EXISTS (SELECT 1 FROM meta WHERE key = 'clock'"
      " AND value = CAST(CAST(value AS INTEGER) AS TEXT) AND CAST(value AS INTEGER) >="
      " (SELECT ifnull(max(clock), 0) FROM stamp WHERE clock BETWEEN 0 AND 4611686018427387903))",
      "clock of the changes is behind its stamps", "clocks of the changes are behind their stamps"}});

// What is mended of an undoing comes after what is mended of the entry that it takes back.
#define BAITWRIGHT_NEW_MARK(table) \
    "UPDATE " table                \
    " SET mark = lower(hex(randomblob(16))) WHERE length(mark) <> 32 OR ltrim(mark, '0123456789abcdef') <> ''"
#define BAITWRIGHT_UNDOING_MARK(table)                                                                             \
    "UPDATE " table " SET mark = substr(u.mark, 17) || substr(u.mark, 1, 16) FROM " table " u WHERE u.id = " table \
    ".undoes AND " table ".mark <> substr(u.mark, 17) || substr(u.mark, 1, 16)"
// Nobody knows when it was changed: what has a stamp in another store stands.
#define BAITWRIGHT_NEW_STAMP(table, kind) \
    "INSERT OR IGNORE INTO stamp SELECT " kind ", folded, 1, 0 FROM " table " WHERE owner = 'person'"

constexpr std::array mark_mends{
    BAITWRIGHT_NEW_MARK("stock_lot"),
    BAITWRIGHT_NEW_MARK("stock_entry"),
    BAITWRIGHT_NEW_MARK("log_entry"),
    BAITWRIGHT_UNDOING_MARK("stock_entry"),
    BAITWRIGHT_UNDOING_MARK("log_entry"),
    "UPDATE stamp SET clock = 1 WHERE clock NOT BETWEEN 0 AND 4611686018427387903",
    "UPDATE stamp SET since = 0 WHERE since NOT BETWEEN 0 AND clock",
    "INSERT INTO meta VALUES ('clock', '1') ON CONFLICT (key) DO NOTHING",
    "UPDATE meta SET value = CAST(max(1, CAST(value AS INTEGER), (SELECT ifnull(max(clock), 1) FROM stamp)) AS TEXT)"
    " WHERE key = 'clock'",
    BAITWRIGHT_NEW_STAMP("ingredient", "'ingredient'"),
    BAITWRIGHT_NEW_STAMP("recipe", "'mix'"),
    BAITWRIGHT_NEW_STAMP("strategy", "'strategy'"),
    BAITWRIGHT_NEW_STAMP("feel", "'feel'")};

// Here and not in SQL: a million marks take a second less.
bool is_mark(std::string_view mark) {
    return mark.size() == 32 && mark.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

void add_mark_finding(const MarkCheck& check, std::int64_t count, StoreFindings& findings) {
    if (count > 0)
        findings.add({"wrong-mark", std::to_string(count) + " " + (count == 1 ? check.one : check.several),
                      std::string("other stores could not tell them apart; ") + put_right_todo, true});
}

}  // namespace

void check_balances(StoreConnection& connection, StoreFindings& findings) {
    if (!can_be_summed(connection)) return;
    add_wrong_sums(Query(connection, select_wrong_lots), "a lot of", findings);
    add_wrong_sums(Query(connection, select_wrong_items), "what is left of", findings);
}

void mend_balances(StoreConnection& connection) {
    if (!can_be_summed(connection)) return;
    Query(connection, stop_counting).run();  // it counts on from what is wrong; the tables' form is mended after
    Query(connection, mend_lots).run();
    Query(connection, mend_items).run();
}

void check_marks(StoreConnection& connection, StoreFindings& findings) {
    for (const MarkCheck& check : marked_rows) {
        std::int64_t count = 0;
        for (Query rows(connection, check.sql); rows.next();) count += is_mark(rows.bytes(0)) ? 0 : 1;
        add_mark_finding(check, count, findings);
    }
    for (const MarkCheck& check : mark_checks) {
        Query row(connection, check.sql);
        add_mark_finding(check, row.next() ? row.whole(0) : 0, findings);
    }
}

void mend_marks(StoreConnection& connection) {
    for (const char* sql : mark_mends) Query(connection, sql).run();
}

}  // namespace baitwright
