#include "store/shed_rows.h"

#include "quantities/fault.h"
#include "quantities/suggestion.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_item = "SELECT id, name, kind, last_on, left_mg FROM stock_item WHERE folded = ?1";
constexpr const char* select_item_by_id = "SELECT id, name, kind, last_on, left_mg FROM stock_item WHERE id = ?1";
constexpr const char* select_lots =
    "SELECT id, state, got_on, best_before, opened_on, refrozen, left_mg, paid_minor, currency, shop, feel FROM stock_lot"
    " WHERE item_id = ?1 AND left_mg > 0 ORDER BY ifnull(best_before, '~'), got_on, id";
constexpr const char* select_lot =
    "SELECT id, state, got_on, best_before, opened_on, refrozen, left_mg, paid_minor, currency, shop, feel FROM stock_lot"
    " WHERE id = ?1";

template <class Enum, std::size_t count>
Enum word_in(const StoreConnection& connection, const Query& row, int column,
             const std::array<std::string_view, count>& words) {
    const std::string word = row.text(column);
    const auto value = value_of<Enum>(words, word);
    if (!value) throw connection.damaged("the word '" + word + "' in the shed");
    return *value;
}

std::optional<Date> optional_date_in(const StoreConnection& connection, const Query& row, int column) {
    if (row.empty(column)) return std::nullopt;
    return date_in(connection, row, column);
}

std::optional<Money> money_in(const StoreConnection& connection, const Query& row, int column) {
    if (row.empty(column)) return std::nullopt;
    try {
        return Money(row.whole(column), currency_named(row.text(column + 1)));
    } catch (const InputError& error) {
        throw connection.damaged(error.what());
    }
}

ItemRow item_in(const StoreConnection& connection, const Query& row) {
    return {row.whole(0),
            row.text(1),
            word_in<StockKind>(connection, row, 2, stock_kind_names),
            date_in(connection, row, 3),
            {row.whole(4)}};
}

Lot lot_in(const StoreConnection& connection, const Query& row) {
    Lot lot;
    lot.id = row.whole(0);
    lot.state = word_in<StockState>(connection, row, 1, stock_state_names);
    lot.got_on = date_in(connection, row, 2);
    lot.best_before = optional_date_in(connection, row, 3);
    lot.opened_on = optional_date_in(connection, row, 4);
    lot.refrozen = static_cast<int>(row.whole(5));
    lot.left = {row.whole(6)};
    lot.paid = money_in(connection, row, 7);
    lot.shop = row.name(9);
    if (!row.empty(10)) lot.feel = row.text(10);
    return lot;
}

}  // namespace

Date date_in(const StoreConnection& connection, const Query& row, int column) {
    try {
        return parse_stored_date(row.text(column));
    } catch (const InputError& error) {
        throw connection.damaged(error.what());
    }
}

Happening happening_in(const StoreConnection& connection, const Query& row, int column) {
    return word_in<Happening>(connection, row, column, happening_names);
}

std::optional<ItemRow> read_item(StoreConnection& connection, std::string_view name) {
    Query row(connection, select_item, folded_name(name));
    if (!row.next()) return std::nullopt;
    return item_in(connection, row);
}

ItemRow read_item(StoreConnection& connection, std::int64_t id) {
    Query row(connection, select_item_by_id, id);
    if (!row.next()) throw connection.damaged("a lot of nothing");
    return item_in(connection, row);
}

std::vector<Lot> read_lots(StoreConnection& connection, std::int64_t item) {
    std::vector<Lot> lots;
    Query rows(connection, select_lots, item);
    while (rows.next()) lots.push_back(lot_in(connection, rows));
    return lots;
}

Lot read_lot(StoreConnection& connection, std::int64_t id) {
    Query row(connection, select_lot, id);
    if (!row.next()) throw connection.damaged("a movement of no lot");
    return lot_in(connection, row);
}

}  // namespace baitwright
