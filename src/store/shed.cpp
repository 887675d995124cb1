#include "store/shed.h"

#include <algorithm>
#include <set>

#include "store/content_mark.h"
#include "store/shed_rows.h"

namespace baitwright {

namespace {

constexpr const char* select_in_turn =
    "SELECT item_id FROM stock_lot WHERE left_mg > 0 ORDER BY ifnull(best_before, '~'), got_on, id";
constexpr const char* count_items = "SELECT count(*) FROM stock_item WHERE left_mg > 0";
constexpr const char* select_names = "SELECT name FROM stock_item ORDER BY folded";
constexpr const char* select_history =
    "SELECT e.id, e.what, e.happened_on, e.session, e.undoes, u.id, m.lot_id, m.milligrams FROM stock_lot l"
    " JOIN stock_movement m ON m.lot_id = l.id JOIN stock_entry e ON e.id = m.entry_id"
    " LEFT JOIN stock_entry u ON u.undoes = e.id WHERE l.item_id = ?1 ORDER BY e.id, m.lot_id";

constexpr const char* select_arrivals =
    "SELECT i.name, l.got_on FROM stock_entry e JOIN stock_movement m ON m.entry_id = e.id"
    " JOIN stock_lot l ON l.id = m.lot_id JOIN stock_item i ON i.id = l.item_id"
    " WHERE e.what = 'bought' AND i.kind = 'ingredient'"
    " AND NOT EXISTS (SELECT 1 FROM stock_entry u WHERE u.undoes = e.id) ORDER BY l.got_on, l.id";

constexpr const char* select_mark = "SELECT 1 FROM stock_from_notes WHERE mark = ?1";
constexpr const char* select_newest_marks =
    "SELECT mark FROM stock_from_notes WHERE instr(mark, ' ') = 0 ORDER BY mark DESC LIMIT ?1";
constexpr const char* insert_mark = "INSERT INTO stock_from_notes VALUES (?1, nullif(?2, 0))";
constexpr const char* mark_noted_entry = "UPDATE stock_entry SET mark = ?2 WHERE id = ?1";
constexpr const char* mark_noted_lot =
    "UPDATE stock_lot SET mark = ?2 WHERE id IN (SELECT m.lot_id FROM stock_movement m WHERE m.entry_id = ?1"
    " AND NOT EXISTS (SELECT 1 FROM stock_movement o WHERE o.lot_id = m.lot_id AND o.entry_id < ?1))";

StockItem item_with_lots(StoreConnection& connection, ItemRow row) {
    StockItem item{std::move(row.name), row.kind, row.left, {}};
    if (item.left > Milligrams{}) item.lots = read_lots(connection, row.id);
    return item;
}

std::vector<std::int64_t> first_in_turn(StoreConnection& connection, std::size_t most) {
    std::vector<std::int64_t> items;
    std::set<std::int64_t> seen;
    Query rows(connection, select_in_turn);
    while (items.size() < most && rows.next())
        if (seen.insert(rows.whole(0)).second) items.push_back(rows.whole(0));
    return items;
}

/// Undone and undoing numbers are 0 where there are none.
std::int64_t number_or_none(const Query& row, int column) {
    return row.empty(column) ? 0 : row.whole(column);
}

std::vector<StockEntry> entries_of(StoreConnection& connection, std::int64_t item) {
    std::vector<StockEntry> entries;
    Query rows(connection, select_history, item);
    while (rows.next()) {
        if (entries.empty() || entries.back().id != rows.whole(0))
            entries.push_back({rows.whole(0),
                               happening_in(connection, rows, 1),
                               date_in(connection, rows, 2),
                               rows.text(3),
                               number_or_none(rows, 4),
                               number_or_none(rows, 5),
                               {}});
        entries.back().changes.push_back({rows.whole(6), {rows.whole(7)}});
    }
    return entries;
}

}  // namespace

std::vector<StockItem> Shed::items(std::size_t most) const {
    return connection_->guarded([&] {
        const StoreConnection::Snapshot snapshot(*connection_);
        std::vector<StockItem> items;
        for (const std::int64_t id : first_in_turn(*connection_, most))
            items.push_back(item_with_lots(*connection_, read_item(*connection_, id)));
        return items;
    });
}

std::size_t Shed::item_count() const {
    return connection_->guarded([&] {
        Query row(*connection_, count_items);
        row.next();
        return static_cast<std::size_t>(row.whole(0));
    });
}

std::optional<StockItem> Shed::find(std::string_view name) const {
    return connection_->guarded([&]() -> std::optional<StockItem> {
        const StoreConnection::Snapshot snapshot(*connection_);
        auto row = read_item(*connection_, name);
        if (!row) return std::nullopt;
        return item_with_lots(*connection_, *std::move(row));
    });
}

Milligrams Shed::left_of(std::string_view name) const {
    return connection_->guarded([&] {
        const auto row = read_item(*connection_, name);
        return row ? row->left : Milligrams{};
    });
}

std::vector<std::string> Shed::names() const {
    return connection_->guarded([&] {
        std::vector<std::string> names;
        Query rows(*connection_, select_names);
        while (rows.next()) names.push_back(rows.text(0));
        return names;
    });
}

std::vector<NewLot> Shed::arrivals() const {
    return connection_->guarded([&] {
        std::vector<NewLot> lots;
        Query rows(*connection_, select_arrivals);
        while (rows.next()) lots.push_back({rows.text(0), date_in(*connection_, rows, 1)});
        return lots;
    });
}

std::vector<StockEntry> Shed::history(std::string_view name) const {
    return connection_->guarded([&]() -> std::vector<StockEntry> {
        const StoreConnection::Snapshot snapshot(*connection_);
        const auto row = read_item(*connection_, name);
        return row ? entries_of(*connection_, row->id) : std::vector<StockEntry>{};
    });
}

bool Shed::knows_mark(std::string_view mark) const {
    return connection_->guarded([&] { return Query(*connection_, select_mark, mark).next(); });
}

std::vector<std::string> Shed::newest_marks(std::size_t most) const {
    return connection_->guarded([&] {
        std::vector<std::string> marks;
        Query rows(*connection_, select_newest_marks, static_cast<std::int64_t>(most));
        while (rows.next()) marks.push_back(rows.text(0));
        return marks;
    });
}

void Shed::note_mark(std::string_view mark, std::int64_t entry) {
    connection_->require_change();
    connection_->guarded([&] {
        Query(*connection_, insert_mark, mark, entry).run();
        if (entry == 0) return;
        const std::string of_entry = mark_of({"shed from notes", mark});
        Query(*connection_, mark_noted_entry, entry, of_entry).run();
        Query(*connection_, mark_noted_lot, entry, mark_of({"lot of", of_entry})).run();
    });
}

}  // namespace baitwright
