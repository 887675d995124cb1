#include "store/merge_book.h"

#include <array>

#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/entry_register.h"
#include "store/log_rows.h"
#include "store/query.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr std::array<const char*, 4> select_present{
    "SELECT e.folded, e.name, e.owner, ifnull(s.clock, 0), ifnull(s.since, 0) FROM ingredient e LEFT JOIN stamp s"
    " ON s.kind = ?1 AND s.folded = e.folded",
    "SELECT e.folded, e.name, e.owner, ifnull(s.clock, 0), ifnull(s.since, 0) FROM recipe e LEFT JOIN stamp s"
    " ON s.kind = ?1 AND s.folded = e.folded",
    "SELECT e.folded, e.name, e.owner, ifnull(s.clock, 0), ifnull(s.since, 0) FROM strategy e LEFT JOIN stamp s"
    " ON s.kind = ?1 AND s.folded = e.folded",
    "SELECT e.folded, e.name, e.owner, ifnull(s.clock, 0), ifnull(s.since, 0) FROM written e LEFT JOIN stamp s"
    " ON s.kind = ?1 AND s.folded = e.folded WHERE e.kind = ?1",
};
constexpr const char* select_given_up =
    "SELECT g.folded, g.name, g.became, ifnull(s.clock, 0), ifnull(s.since, 0) FROM gone g LEFT JOIN stamp s"
    " ON s.kind = g.kind AND s.folded = g.folded WHERE g.kind = ?1";
constexpr const char* select_clocks = "SELECT folded, clock FROM stamp WHERE kind = ?1";
constexpr const char* select_references =
    "SELECT part_of, 1 FROM recipe_part UNION SELECT dose_of, 0 FROM recipe_dose UNION SELECT part_of, 1"
    " FROM strategy_feed_part UNION SELECT bait, 0 FROM strategy_hookbait";
constexpr const char* select_held = "SELECT name, kind FROM stock_item WHERE left_mg > 0 ORDER BY folded";
constexpr const char* select_overdrawn_items = "SELECT name, over_mg FROM stock_item WHERE over_mg > 0 ORDER BY folded";
constexpr const char* select_merge_clock = "SELECT CAST(value AS INTEGER) FROM meta WHERE key = 'clock'";
constexpr const char* put_merge_clock = "INSERT OR REPLACE INTO meta VALUES ('clock', CAST(?1 AS TEXT))";
constexpr const char* delete_merged_feel = "DELETE FROM feel WHERE folded = ?1";
constexpr const char* forget_stamp = "DELETE FROM stamp WHERE kind = ?1 AND folded = ?2";
constexpr const char* replace_stamp = "INSERT OR REPLACE INTO stamp VALUES (?1, ?2, ?3, ?4)";
constexpr const char* replace_gone = "INSERT OR REPLACE INTO gone VALUES (?1, ?2, ?3, ?4, ?5)";
constexpr const char* select_item_number = "SELECT id FROM stock_item WHERE folded = ?1 AND kind = ?2";
constexpr std::array join_two_items{
    "UPDATE stock_lot SET item_id = ?2 WHERE item_id = ?1", "UPDATE stock_entry SET item_id = ?2 WHERE item_id = ?1",
    "UPDATE stock_item SET last_on = max(last_on, (SELECT last_on FROM stock_item WHERE id = ?1)),"
    " kind = min(kind, (SELECT kind FROM stock_item WHERE id = ?1)),"
    " left_mg = left_mg + (SELECT left_mg FROM stock_item WHERE id = ?1),"
    " over_mg = over_mg + (SELECT over_mg FROM stock_item WHERE id = ?1) WHERE id = ?2"};
constexpr const char* delete_item = "DELETE FROM stock_item WHERE id = ?1";
constexpr const char* call_item = "UPDATE stock_item SET name = ?3, folded = ?4 WHERE folded = ?2 AND kind = ?1";
constexpr const char* call_retired = "UPDATE retired SET name = ?3, folded = ?4 WHERE kind = ?1 AND folded = ?2";
constexpr const char* drop_same_retired =
    "DELETE FROM retired WHERE kind = ?1 AND folded = ?2 AND id NOT IN (SELECT min(id) FROM retired WHERE kind = ?1"
    " AND folded = ?2 GROUP BY retired_on, text)";
constexpr const char* call_usual = "UPDATE usual SET value = ?2 WHERE key = 'venue' AND lower(value) = ?1";
constexpr const char* keep_pack_prices =
    "INSERT OR IGNORE INTO old_price (ingredient_id, measure, size, price_minor, currency, priced_on, shop)"
    " SELECT i.id, p.measure, p.size, p.price_minor, p.currency, p.priced_on, p.shop FROM pack p"
    " JOIN ingredient i ON i.id = p.ingredient_id WHERE i.folded = ?1 AND p.price_minor IS NOT NULL";
constexpr const char* insert_name_now = "INSERT INTO temp.name_now VALUES ('ingredient', ?1, ?2)";
constexpr std::array call_items_as_library{
    "UPDATE stock_item SET name = i.name FROM ingredient i WHERE stock_item.kind = 'ingredient'"
    " AND i.folded = stock_item.folded AND i.name <> stock_item.name",
    "UPDATE stock_item SET name = r.name FROM recipe r WHERE stock_item.kind = 'mix' AND r.folded = stock_item.folded"
    " AND r.name <> stock_item.name"};

constexpr std::array drop_what_is_of_none{
    "DELETE FROM ingredient_property WHERE ingredient_id NOT IN (SELECT id FROM ingredient)",
    "DELETE FROM pack WHERE ingredient_id NOT IN (SELECT id FROM ingredient)",
    "DELETE FROM caution WHERE ingredient_id NOT IN (SELECT id FROM ingredient)",
    "DELETE FROM old_price WHERE ingredient_id NOT IN (SELECT id FROM ingredient)",
    "DELETE FROM recipe_part WHERE recipe_id NOT IN (SELECT id FROM recipe)",
    "DELETE FROM recipe_dose WHERE recipe_id NOT IN (SELECT id FROM recipe)",
    "DELETE FROM strategy_feed WHERE strategy_id NOT IN (SELECT id FROM strategy)",
    "DELETE FROM strategy_feed_part WHERE strategy_id NOT IN (SELECT id FROM strategy)",
    "DELETE FROM strategy_hookbait WHERE strategy_id NOT IN (SELECT id FROM strategy)"};

const char* present_of(EntryKind kind) {
    return select_present.at(std::min<std::size_t>(static_cast<std::size_t>(kind), 3));
}

std::optional<std::int64_t> item_numbered(StoreConnection& connection, EntryKind kind, const std::string& folded) {
    Query row(connection, select_item_number, folded, name_of(kind));
    return row.next() ? std::optional(row.whole(0)) : std::nullopt;
}

}  // namespace

std::map<std::string, NameState> MergeBook::names(EntryKind kind) const {
    return connection_->guarded([&] {
        std::map<std::string, NameState> names;
        {
            Query row(*connection_, present_of(kind), name_of(kind));
            while (row.next())
                names[row.text(0)] = {
                    row.text(1), true,         row.text(2) == owner_words[0] ? EntryOwner::shipped : EntryOwner::person,
                    {},          row.whole(3), row.whole(4)};
        }
        Query row(*connection_, select_given_up, name_of(kind));
        while (row.next())
            names.try_emplace(row.text(0), NameState{row.text(1), false, EntryOwner::person, row.text(2), row.whole(3),
                                                     row.whole(4)});
        return names;
    });
}

std::map<std::string, std::int64_t> MergeBook::clocks(std::string_view kind) const {
    return connection_->guarded([&] {
        std::map<std::string, std::int64_t> clocks;
        Query row(*connection_, select_clocks, kind);
        while (row.next()) clocks[row.text(0)] = row.whole(1);
        return clocks;
    });
}

std::vector<MergeBook::Reference> MergeBook::references() const {
    return connection_->guarded([&] {
        std::vector<Reference> references;
        Query row(*connection_, select_references);
        while (row.next()) references.push_back({row.text(0), row.whole(1) != 0});
        return references;
    });
}

std::vector<NamedEntry> MergeBook::held() const {
    return connection_->guarded([&] {
        std::vector<NamedEntry> held;
        Query row(*connection_, select_held);
        while (row.next())
            held.push_back(
                {row.text(1) == name_of(EntryKind::mix) ? EntryKind::mix : EntryKind::ingredient, row.text(0)});
        return held;
    });
}

std::vector<Overdrawn> MergeBook::overdrawn() const {
    return connection_->guarded([&] {
        std::vector<Overdrawn> items;
        Query row(*connection_, select_overdrawn_items);
        while (row.next()) items.push_back({row.text(0), {row.whole(1)}});
        return items;
    });
}

void MergeBook::set_stamp(std::string_view kind, const std::string& folded, std::int64_t clock, std::int64_t since) {
    connection_->guarded([&] {
        if (clock == 0 && since == 0)
            Query(*connection_, forget_stamp, kind, folded).run();
        else
            Query(*connection_, replace_stamp, kind, folded, clock, since).run();
    });
}

std::int64_t MergeBook::clock() const {
    return connection_->guarded([&] {
        Query row(*connection_, select_merge_clock);
        return row.next() ? row.whole(0) : 0;
    });
}

void MergeBook::set_clock(std::int64_t clock) {
    connection_->guarded([&] { Query(*connection_, put_merge_clock, clock).run(); });
}

void MergeBook::set_gone(EntryKind kind, const std::string& name, const std::string& became) {
    connection_->guarded([&] {
        Query(*connection_, replace_gone, name_of(kind), folded_name(name), name, became, folded_name(became)).run();
    });
}

void MergeBook::lay_prices_by(const std::string& ingredient) {
    connection_->guarded([&] { Query(*connection_, keep_pack_prices, folded_name(ingredient)).run(); });
}

void MergeBook::join_items(EntryKind kind, const std::string& from, const std::string& to) {
    connection_->guarded([&] {
        const auto old = item_numbered(*connection_, kind, from), now = item_numbered(*connection_, kind, to);
        if (from == to || !old || !now) return;
        for (const char* sql : join_two_items) Query(*connection_, sql, *old, *now).run();
        Query(*connection_, delete_item, *old).run();
    });
}

void MergeBook::follow(EntryKind kind, const std::string& from, const std::string& to) {
    connection_->guarded([&] {
        const std::string folded = folded_name(to);
        rename_references(*connection_, kind, from, to);
        rename_in_log(*connection_, kind, from, to);
        follow_in_learnt(*connection_, kind, from, to);
        Query(*connection_, call_retired, name_of(kind), from, to, folded).run();
        Query(*connection_, drop_same_retired, name_of(kind), folded).run();
        if (kind == EntryKind::venue) Query(*connection_, call_usual, from, to).run();
        if (kind != EntryKind::ingredient && kind != EntryKind::mix) return;
        join_items(kind, from, folded);
        Query(*connection_, call_item, name_of(kind), from, to, folded).run();
    });
}

void MergeBook::remove(EntryKind kind, const std::string& name) {
    connection_->guarded([&] {
        EntryRegister(*connection_).remove(kind, name);
        for (const char* sql : drop_what_is_of_none) Query(*connection_, sql).run();
    });
}

void MergeBook::remove_feel(const std::string& folded) {
    connection_->guarded([&] {
        Query(*connection_, delete_merged_feel, folded).run();
        Query(*connection_, forget_stamp, "feel", folded).run();
    });
}

void MergeBook::begin() {
    connection_->guarded([&] { rest_triggers(*connection_); });
}

RowsBrought MergeBook::bring_rows() {
    return connection_->guarded([&] {
        RowsBrought brought;
        bring_ledger(*connection_, brought);
        bring_log(*connection_, brought);
        bring_sets(*connection_, brought);
        return brought;
    });
}

void MergeBook::bring_prices(const std::map<std::string, std::string>& now) {
    connection_->guarded([&] {
        connection_->run_once("CREATE TEMP TABLE name_now (kind TEXT, folded TEXT PRIMARY KEY, now TEXT)");
        for (const auto& [folded, name] : now) Query(*connection_, insert_name_now, folded, name).run();
        baitwright::bring_prices(*connection_);
        connection_->run_once("DROP TABLE temp.name_now");
    });
}

void MergeBook::end() {
    connection_->guarded([&] {
        for (const char* sql : call_items_as_library) Query(*connection_, sql).run();
        wake_triggers(*connection_);
    });
}

}  // namespace baitwright
