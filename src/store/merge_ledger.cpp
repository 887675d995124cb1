#include <array>
#include <string>

#include "store/merge_tables.h"
#include "store/query.h"

namespace baitwright {

namespace {

// Numbers of the other store's rows, and those that they have here.
constexpr std::array map_ledger{
    "CREATE TEMP TABLE merged_item (other_id INTEGER PRIMARY KEY, id INTEGER NOT NULL)",
    "CREATE TEMP TABLE merged_lot (other_id INTEGER PRIMARY KEY, id INTEGER NOT NULL, is_new INTEGER NOT NULL)",
    "INSERT INTO main.stock_item (name, folded, kind, last_on) SELECT o.name, o.folded, o.kind, o.last_on"
    " FROM other.stock_item o WHERE NOT EXISTS (SELECT 1 FROM main.stock_item i WHERE i.folded = o.folded) ORDER BY o.id",
    "UPDATE main.stock_item AS i SET last_on = max(i.last_on, o.last_on), kind = min(i.kind, o.kind),"
    " name = max(i.name, o.name) FROM other.stock_item o WHERE o.folded = i.folded",
    "INSERT INTO merged_item SELECT o.id, i.id FROM other.stock_item o JOIN main.stock_item i ON i.folded = o.folded",
    "INSERT INTO merged_lot SELECT o.id, m.id, 0 FROM other.stock_lot o CROSS JOIN main.stock_lot m ON m.mark = o.mark",
    "INSERT INTO merged_lot SELECT o.id, (SELECT ifnull(max(id), 0) FROM main.stock_lot) + row_number()"
    " OVER (ORDER BY o.id), 1 FROM other.stock_lot o WHERE o.id NOT IN (SELECT other_id FROM merged_lot)",
};

// A bag holds what the movements that come with it make: one of which all are here already, under a mark of another
// bag, holds nothing.
constexpr std::array bring_rows{
    "INSERT INTO main.stock_lot (id, item_id, state, got_on, best_before, opened_on, refrozen, left_mg, paid_minor,"
    " currency, shop, feel, over_mg, mark) SELECT m.id, i.id, o.state, o.got_on, o.best_before, o.opened_on, o.refrozen,"
    " 0, o.paid_minor, o.currency, o.shop, o.feel, 0, o.mark FROM merged_lot m"
    " JOIN other.stock_lot o ON o.id = m.other_id JOIN merged_item i ON i.other_id = o.item_id WHERE m.is_new",
    "INSERT INTO main.stock_entry (id, what, happened_on, item_id, session, undoes, mark) SELECT m.id, o.what,"
    " o.happened_on, i.id, o.session, u.id, o.mark FROM merged_entry m CROSS JOIN other.stock_entry o ON o.id = m.other_id"
    " LEFT JOIN merged_item i ON i.other_id = o.item_id LEFT JOIN merged_entry u ON u.other_id = o.undoes WHERE m.is_new",
    "INSERT INTO main.stock_movement SELECT e.id, l.id, m.milligrams FROM merged_entry e CROSS JOIN other.stock_movement m"
    " ON m.entry_id = e.other_id CROSS JOIN merged_lot l ON l.other_id = m.lot_id WHERE e.is_new",
};

constexpr std::array reckon_rows{
    "UPDATE main.stock_lot AS l SET left_mg = max(0, l.left_mg - l.over_mg + t.mg),"
    " over_mg = max(0, l.over_mg - l.left_mg - t.mg) FROM (SELECT k.id AS lot, sum(m.milligrams) AS mg FROM merged_entry e"
    " CROSS JOIN other.stock_movement m ON m.entry_id = e.other_id CROSS JOIN merged_lot k ON k.other_id = m.lot_id"
    " WHERE e.is_new GROUP BY k.id) t WHERE l.id = t.lot",
    "INSERT INTO main.stock_from_notes SELECT n.mark, e.id FROM other.stock_from_notes n LEFT JOIN merged_entry e"
    " ON e.other_id = n.entry_id WHERE 1 ON CONFLICT (mark) DO UPDATE SET entry_id = ifnull(entry_id, excluded.entry_id)",
};

// A lot that is called otherwise in the two, or came with notes against two libraries: one of the two stands.
constexpr std::array settle_lots{
    "UPDATE main.stock_lot AS l SET state = o.state, got_on = o.got_on, best_before = o.best_before,"
    " refrozen = o.refrozen, paid_minor = o.paid_minor, currency = o.currency, shop = o.shop, feel = o.feel"
    " FROM merged_lot m JOIN other.stock_lot o ON o.id = m.other_id WHERE NOT m.is_new AND l.id = m.id"
    " AND mark_of(o.state, o.got_on, o.best_before, o.refrozen, o.paid_minor, o.currency, o.shop, o.feel)"
    " > mark_of(l.state, l.got_on, l.best_before, l.refrozen, l.paid_minor, l.currency, l.shop, l.feel)",
    "CREATE TEMP TABLE moved_lot AS SELECT m.id AS lot, i.id AS item, a.folded > b.folded AS moves FROM merged_lot m"
    " JOIN other.stock_lot o ON o.id = m.other_id JOIN merged_item i ON i.other_id = o.item_id"
    " JOIN main.stock_item a ON a.id = i.id JOIN main.stock_lot l ON l.id = m.id JOIN main.stock_item b ON b.id = l.item_id"
    " WHERE NOT m.is_new AND a.id <> b.id",
    "UPDATE main.stock_lot AS l SET item_id = m.item FROM moved_lot m WHERE l.id = m.lot AND m.moves",
    "UPDATE main.stock_entry AS e SET item_id = i.id FROM merged_entry m JOIN other.stock_entry o ON o.id = m.other_id"
    " JOIN merged_item i ON i.other_id = o.item_id JOIN main.stock_item a ON a.id = i.id"
    " WHERE EXISTS (SELECT 1 FROM moved_lot) AND NOT m.is_new AND e.id = m.id"
    " AND a.folded > ifnull((SELECT b.folded FROM main.stock_item b WHERE b.id = e.item_id), '')",
};

// Notes of a phone that were taken in by both: the entry stands as one of the two has it, and its undoing with it.
constexpr std::array settle_noted{
    "CREATE TEMP TABLE noted (id INTEGER PRIMARY KEY, other_id INTEGER NOT NULL, takes INTEGER NOT NULL)",
    "INSERT OR IGNORE INTO noted SELECT id, other_id, theirs > ours FROM (SELECT n.entry_id AS id, o.entry_id AS other_id,"
    " (SELECT mark_of(happened_on, what, (SELECT group_concat(x) FROM (SELECT l.mark || m.milligrams AS x"
    " FROM main.stock_movement m JOIN main.stock_lot l ON l.id = m.lot_id WHERE m.entry_id = n.entry_id ORDER BY l.mark)))"
    " FROM main.stock_entry WHERE id = n.entry_id) AS ours,"
    " (SELECT mark_of(happened_on, what, (SELECT group_concat(x) FROM (SELECT l.mark || m.milligrams AS x"
    " FROM other.stock_movement m JOIN other.stock_lot l ON l.id = m.lot_id WHERE m.entry_id = o.entry_id"
    " ORDER BY l.mark))) FROM other.stock_entry WHERE id = o.entry_id) AS theirs"
    " FROM other.stock_from_notes o JOIN main.stock_from_notes n ON n.mark = o.mark JOIN merged_entry e"
    " ON e.other_id = o.entry_id WHERE NOT e.is_new) WHERE theirs <> ours",
    "CREATE TEMP TABLE reckoned_lot (id INTEGER PRIMARY KEY)",
    "INSERT OR IGNORE INTO reckoned_lot SELECT m.lot_id FROM noted n CROSS JOIN main.stock_movement m ON m.entry_id = n.id",
    "INSERT OR IGNORE INTO reckoned_lot SELECT l.id FROM noted n CROSS JOIN other.stock_movement m ON m.entry_id = n.other_id"
    " JOIN merged_lot l ON l.other_id = m.lot_id",
    "DELETE FROM main.stock_movement WHERE entry_id IN (SELECT id FROM noted WHERE takes)",
    "INSERT INTO main.stock_movement SELECT n.id, l.id, m.milligrams FROM noted n CROSS JOIN other.stock_movement m"
    " ON m.entry_id = n.other_id JOIN merged_lot l ON l.other_id = m.lot_id WHERE n.takes",
    "UPDATE main.stock_entry AS e SET happened_on = o.happened_on, what = o.what FROM noted n CROSS JOIN other.stock_entry o"
    " ON o.id = n.other_id WHERE n.takes AND e.id = n.id",
    "INSERT OR IGNORE INTO reckoned_lot SELECT m.lot_id FROM noted n CROSS JOIN main.stock_entry u ON u.undoes = n.id"
    " CROSS JOIN main.stock_movement m ON m.entry_id = u.id",
    "DELETE FROM main.stock_movement WHERE entry_id IN"
    " (SELECT u.id FROM noted n CROSS JOIN main.stock_entry u ON u.undoes = n.id)",
    "INSERT INTO main.stock_movement SELECT u.id, m.lot_id, -m.milligrams FROM noted n CROSS JOIN main.stock_entry u"
    " ON u.undoes = n.id CROSS JOIN main.stock_movement m ON m.entry_id = n.id",
    "UPDATE main.stock_lot AS l SET left_mg = max(0, t.mg), over_mg = max(0, -t.mg) FROM (SELECT r.id AS lot,"
    " ifnull((SELECT sum(m.milligrams) FROM main.stock_movement m WHERE m.lot_id = r.id), 0) AS mg FROM reckoned_lot r) t"
    " WHERE l.id = t.lot",
};

constexpr std::array settle_days{
    "UPDATE main.stock_entry AS e SET happened_on = o.happened_on FROM other.stock_entry o JOIN merged_entry m"
    " ON m.other_id = o.id WHERE o.undoes > 0 AND NOT m.is_new AND e.id = m.id AND o.happened_on < e.happened_on",
    "UPDATE main.stock_lot AS l SET opened_on = min(ifnull(l.opened_on, o.opened_on), o.opened_on) FROM merged_lot m"
    " JOIN other.stock_lot o ON o.id = m.other_id WHERE l.id = m.id AND o.opened_on IS NOT NULL AND NOT m.is_new",
    "INSERT OR IGNORE INTO reckoned_lot SELECT v.lot_id FROM main.stock_entry u CROSS JOIN main.stock_movement v"
    " ON v.entry_id = u.id WHERE u.undoes > 0 AND v.lot_id IN (SELECT id FROM merged_lot WHERE NOT is_new)",
    "UPDATE main.stock_lot AS l SET opened_on = (SELECT min(e.happened_on) FROM main.stock_movement m"
    " JOIN main.stock_entry e ON e.id = m.entry_id WHERE m.lot_id = l.id AND e.what IN ('used', 'booked')"
    " AND NOT EXISTS (SELECT 1 FROM main.stock_entry u WHERE u.undoes = e.id)) WHERE l.id IN"
    " (SELECT id FROM reckoned_lot)",
    "UPDATE main.stock_item AS i SET left_mg = ifnull(t.left_mg, 0), over_mg = ifnull(t.over_mg, 0)"
    " FROM (SELECT a.id, (SELECT sum(left_mg) FROM main.stock_lot WHERE item_id = a.id) AS left_mg,"
    " (SELECT sum(over_mg) FROM main.stock_lot WHERE item_id = a.id) AS over_mg FROM main.stock_item a) t"
    " WHERE i.id = t.id",
};

constexpr const char* count_entries = "SELECT count(*) FROM main.stock_entry";
constexpr const char* select_index_of_marks = "SELECT sql FROM main.sqlite_schema WHERE name = 'stock_entry_by_mark'";
constexpr std::array forget_ledger_maps{"DROP TABLE temp.merged_item",  "DROP TABLE temp.merged_lot",
                                        "DROP TABLE temp.merged_entry", "DROP TABLE temp.moved_lot",
                                        "DROP TABLE temp.noted",        "DROP TABLE temp.reckoned_lot"};

template <class Statements>
void run_each(StoreConnection& connection, const Statements& statements) {
    for (const char* sql : statements) connection.run_once(sql);
}

/// The index of the marks rests while many rows come in, and is made anew behind them: sorted once, in half the time.
class RestingIndex {
public:
    RestingIndex(StoreConnection& connection, std::int64_t coming) : connection_(connection) {
        if (coming * 4 < whole_of(count_entries)) return;
        Query row(connection, select_index_of_marks);
        if (row.next()) sql_ = row.text(0);
    }
    void rest() {
        if (!sql_.empty()) connection_.run_once("DROP INDEX main.stock_entry_by_mark");
    }
    void wake() {
        if (!sql_.empty()) connection_.sort_in_small_heaps([&] { connection_.run_once(sql_); });
    }

private:
    std::int64_t whole_of(const char* sql) {
        Query row(connection_, sql);
        row.next();
        return row.whole(0);
    }

    StoreConnection& connection_;
    std::string sql_;
};

}  // namespace

void bring_ledger(StoreConnection& connection, RowsBrought& brought) {
    run_each(connection, map_ledger);
    const std::int64_t coming = match_entries(connection);
    RestingIndex marks(connection, coming);
    marks.rest();
    run_each(connection, bring_rows);
    marks.wake();
    run_each(connection, reckon_rows);
    run_each(connection, settle_lots);
    run_each(connection, settle_noted);
    run_each(connection, settle_days);
    brought.shed_entries = coming;
    run_each(connection, forget_ledger_maps);
}

}  // namespace baitwright
