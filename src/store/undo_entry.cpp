#include <map>

#include "quantities/fault.h"
#include "store/shed.h"
#include "store/shed_entry.h"

namespace baitwright {

namespace {

constexpr const char* last_entry =
    "SELECT id FROM stock_entry e WHERE undoes IS NULL"
    " AND NOT EXISTS (SELECT 1 FROM stock_entry u WHERE u.undoes = e.id) ORDER BY id DESC LIMIT 1";
constexpr const char* select_entry =
    "SELECT e.what, e.undoes, u.id, e.session FROM stock_entry e LEFT JOIN stock_entry u ON u.undoes = e.id"
    " WHERE e.id = ?1";
constexpr const char* select_day = "SELECT happened_on FROM stock_entry WHERE id = ?1";
constexpr const char* select_movements =
    "SELECT m.lot_id, m.milligrams, l.item_id FROM stock_movement m JOIN stock_lot l ON l.id = m.lot_id"
    " WHERE m.entry_id = ?1";

[[noreturn]] void refuse(std::string code, std::string message, std::string hint) {
    throw Error(FaultClass::answer_is_no, Fault{std::move(code), std::move(message), std::move(hint)});
}

std::int64_t entry_to_undo(StoreConnection& connection, std::optional<std::int64_t> entry) {
    if (entry) return *entry;
    Query row(connection, last_entry);
    if (!row.next())
        throw NotFound("nothing-to-undo", "there is no entry that could be undone",
                       "look at what there is with: baitwright stock history \"brown crumb\"");
    return row.whole(0);
}

/// The entry's session, where it can be undone at all.
std::string session_of_undoable(StoreConnection& connection, std::int64_t entry) {
    Query row(connection, select_entry, entry);
    const std::string number = std::to_string(entry);
    if (!row.next())
        throw NotFound("unknown-entry", "there is no entry " + number, "see them with: baitwright stock history NAME");
    if (!row.empty(1))
        refuse("cannot-undo", "entry " + number + " is itself the undoing of entry " + std::to_string(row.whole(1)),
               "enter again what happened");
    if (!row.empty(2))
        refuse("cannot-undo", "entry " + number + " is undone already, by entry " + std::to_string(row.whole(2)),
               "enter again what happened");
    return row.text(3);
}

Date day_of(StoreConnection& connection, std::int64_t entry) {
    Query row(connection, select_day, entry);
    row.next();
    return date_in(connection, row, 0);
}

void refuse_counted_since(StoreConnection& connection, const ItemRow& item, std::int64_t entry) {
    const auto counted = last_count_of(connection, item.id);
    // By the day first: what came from another store has a higher number, whenever it happened.
    if (counted && std::pair(counted->on, counted->entry) > std::pair(day_of(connection, entry), entry))
        refuse("cannot-undo",
               item.name + " was counted since, on " + date_text(counted->on) + ", and that count took in entry " +
                   std::to_string(entry),
               "undo the count first: baitwright stock undo " + std::to_string(counted->entry) + "; or count again");
}

void refuse_used_since(StoreConnection& connection, const ItemRow& item, const Movement& back) {
    const Lot lot = read_lot(connection, back.lot);
    if (lot.left + back.by < Milligrams{})
        refuse("cannot-undo", "some of that " + item.name + " went out since, and nothing falls below zero",
               "undo that first: see baitwright stock history \"" + item.name + "\"");
}

/// The entry's movements turned round, by item.
std::vector<Change> turned_round(StoreConnection& connection, std::int64_t entry) {
    std::map<std::int64_t, std::vector<Movement>> by_item;
    Query rows(connection, select_movements, entry);
    while (rows.next()) by_item[rows.whole(2)].push_back({rows.whole(0), {-rows.whole(1)}});
    std::vector<Change> changes;
    for (auto& [id, movements] : by_item) {
        Change change{read_item(connection, id), std::move(movements)};
        refuse_counted_since(connection, change.item, entry);
        for (const Movement& back : change.movements) refuse_used_since(connection, change.item, back);
        changes.push_back(std::move(change));
    }
    return changes;
}

}  // namespace

StockReceipt Shed::undo(std::optional<std::int64_t> entry, Date on) {
    connection_->require_change();
    return connection_->guarded([&] {
        const std::int64_t back = entry_to_undo(*connection_, entry);
        const std::string session = session_of_undoable(*connection_, back);
        return write_entry(*connection_, {0, Happening::undone, on, session, back, {}},
                           turned_round(*connection_, back));
    });
}

}  // namespace baitwright
