#include "store/shed_entry.h"

#include "quantities/fault.h"
#include "quantities/suggestion.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* insert_item =
    "INSERT INTO stock_item (name, folded, kind, last_on) VALUES (?1, ?2, ?3, ?4) RETURNING id";
constexpr const char* touch_item = "UPDATE stock_item SET last_on = max(last_on, ?2) WHERE id = ?1";
constexpr const char* insert_lot =
    "INSERT INTO stock_lot (item_id, state, got_on, best_before, refrozen, paid_minor, currency, shop, feel, mark)"
    " VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, lower(hex(randomblob(16)))) RETURNING id";
constexpr const char* insert_entry =
    "INSERT INTO stock_entry (what, happened_on, item_id, session, undoes, mark) VALUES (?1, ?2, ?3, ?4, ?5,"
    " ifnull((SELECT substr(u.mark, 17) || substr(u.mark, 1, 16) FROM stock_entry u WHERE u.id = ?5),"
    " lower(hex(randomblob(16))))) RETURNING id";
constexpr const char* insert_movement = "INSERT INTO stock_movement VALUES (?1, ?2, ?3)";
constexpr const char* open_lot = "UPDATE stock_lot SET opened_on = min(ifnull(opened_on, ?2), ?2) WHERE id = ?1";
constexpr const char* reopen_lot =
    "UPDATE stock_lot SET opened_on = (SELECT min(e.happened_on) FROM stock_movement m"
    " JOIN stock_entry e ON e.id = m.entry_id WHERE m.lot_id = ?1 AND e.what IN ('used', 'booked')"
    " AND NOT EXISTS (SELECT 1 FROM stock_entry u WHERE u.undoes = e.id)) WHERE id = ?1";
constexpr const char* last_count =
    "SELECT id, happened_on FROM stock_entry e WHERE item_id = ?1 AND what = 'counted'"
    " AND NOT EXISTS (SELECT 1 FROM stock_entry u WHERE u.undoes = e.id)"
    " ORDER BY happened_on DESC, id DESC LIMIT 1";

}  // namespace

std::int64_t number_of(Query&& row) {
    row.next();
    return row.whole(0);
}

std::optional<Counted> last_count_of(StoreConnection& connection, std::int64_t item) {
    Query row(connection, last_count, item);
    if (!row.next()) return std::nullopt;
    return Counted{row.whole(0), date_in(connection, row, 1)};
}

void refuse_before_count(StoreConnection& connection, const ItemRow& item, Date on) {
    const auto counted = last_count_of(connection, item.id);
    if (counted && counted->on > on)
        throw UsageError(
            "before-count",
            item.name + " was counted on " + date_text(counted->on) + ", and that count took in all before it",
            "if the count was wrong, count it again");
}

ItemRow item_for(StoreConnection& connection, const std::string& name, StockKind kind, Date on) {
    auto item = read_item(connection, name);
    if (item && item->kind != kind)
        throw UsageError("other-kind",
                         "'" + item->name + "' is in the shed as " +
                             (item->kind == StockKind::mix ? "a made-up mix" : "an ingredient"),
                         "give one of the two another name");
    if (item) return *std::move(item);
    const std::int64_t id = number_of(
        Query(connection, insert_item, name, folded_name(name), word_of(stock_kind_names, kind), date_text(on)));
    return {id, name, kind, on, {}};
}

std::int64_t write_lot(StoreConnection& connection, std::int64_t item, const Lot& lot) {
    std::optional<std::string_view> feel;
    std::optional<std::string> best_before;
    std::optional<std::int64_t> paid;
    std::optional<std::string_view> currency;
    if (lot.best_before) best_before = date_text(*lot.best_before);
    if (lot.paid) {
        paid = lot.paid->minor();
        currency = lot.paid->currency().code;
    }
    if (!lot.feel.empty()) feel = lot.feel;
    return number_of(Query(connection, insert_lot, item, word_of(stock_state_names, lot.state), date_text(lot.got_on),
                           best_before, std::int64_t{lot.refrozen}, paid, currency, lot.shop, feel));
}

StockReceipt write_entry(StoreConnection& connection, StockReceipt receipt, const std::vector<Change>& changes) {
    std::optional<std::int64_t> item, undoes;
    if (changes.size() == 1 && receipt.what != Happening::booked) item = changes.front().item.id;
    if (receipt.undoes != 0) undoes = receipt.undoes;
    const std::string on = date_text(receipt.on);
    receipt.entry = number_of(
        Query(connection, insert_entry, word_of(happening_names, receipt.what), on, item, receipt.session, undoes));
    for (const Change& change : changes) {
        if (receipt.what != Happening::undone) Query(connection, touch_item, change.item.id, on).run();
        for (const Movement& movement : change.movements) {
            Query(connection, insert_movement, receipt.entry, movement.lot, movement.by.count).run();
            if (receipt.what == Happening::used || receipt.what == Happening::booked)
                Query(connection, open_lot, movement.lot, on).run();
            if (receipt.what == Happening::undone) Query(connection, reopen_lot, movement.lot).run();
        }
    }
    for (const Change& change : changes) {
        const ItemRow after = read_item(connection, change.item.id);
        for (const Movement& movement : change.movements)
            receipt.lines.push_back(
                {after.name, after.kind, read_lot(connection, movement.lot), movement.by, after.left});
    }
    return receipt;
}

std::string exact_grams(Milligrams mass) {
    std::string text = std::to_string(mass.count);  // exactly, and without zeros at the end
    if (text.size() < 4) text.insert(0, 4 - text.size(), '0');
    text.insert(text.size() - 3, ".");
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text + " g";
}

}  // namespace baitwright
