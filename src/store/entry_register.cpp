#include "store/entry_register.h"

#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/log_rows.h"
#include "store/query.h"
#include "store/stamp.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_written = "SELECT name, text FROM written WHERE kind = ?1 ORDER BY folded";
constexpr const char* select_one_written = "SELECT name, text FROM written WHERE kind = ?1 AND folded = ?2";
constexpr const char* upsert_written =
    "INSERT INTO written (kind, folded, name, text, owner) VALUES (?1, ?2, ?3, ?4, ?5) ON CONFLICT (kind, folded)"
    " DO UPDATE SET name = excluded.name, text = excluded.text, owner = excluded.owner";
constexpr const char* delete_written = "DELETE FROM written WHERE kind = ?1 AND folded = ?2";
constexpr const char* rename_written =
    "UPDATE written SET name = ?3, folded = ?4, owner = 'person' WHERE kind = ?1 AND folded = ?2";

constexpr const char* select_became = "SELECT became FROM gone WHERE kind = ?1 AND folded = ?2";
constexpr const char* select_former = "SELECT name FROM gone WHERE kind = ?1 AND became_folded = ?2 ORDER BY folded";
constexpr const char* delete_gone = "DELETE FROM gone WHERE kind = ?1 AND folded = ?2";
constexpr const char* put_gone = "INSERT OR REPLACE INTO gone VALUES (?1, ?2, ?3, ?4, ?5)";
constexpr const char* follow_gone =
    "UPDATE gone SET became = ?3, became_folded = ?4 WHERE kind = ?1 AND became_folded = ?2";

constexpr const char* keep_old_prices =
    "INSERT INTO price_of_removed (folded, measure, size, price_minor, currency, priced_on, shop)"
    " SELECT i.folded, p.measure, p.size, p.price_minor, p.currency, p.priced_on, p.shop FROM old_price p"
    " JOIN ingredient i ON i.id = p.ingredient_id WHERE i.folded = ?1 ORDER BY p.id";
constexpr const char* return_old_prices =
    "INSERT OR IGNORE INTO old_price (ingredient_id, measure, size, price_minor, currency, priced_on, shop)"
    " SELECT i.id, r.measure, r.size, r.price_minor, r.currency, r.priced_on, r.shop FROM price_of_removed r"
    " JOIN ingredient i ON i.folded = r.folded WHERE r.folded = ?1 ORDER BY r.id";
constexpr const char* delete_kept_prices = "DELETE FROM price_of_removed WHERE folded = ?1";
constexpr const char* rename_kept_prices = "UPDATE price_of_removed SET folded = ?2 WHERE folded = ?1";

constexpr const char* follow_in_written =
    "UPDATE written SET text = ?3, owner = 'person' WHERE kind = ?1 AND folded = ?2";
constexpr const char* move_packs_stamp = "UPDATE OR REPLACE stamp SET folded = ?2 WHERE kind = 'packs' AND folded = ?1";
constexpr const char* rename_retired = "UPDATE retired SET name = ?3, folded = ?4 WHERE kind = ?1 AND folded = ?2";
constexpr const char* rename_item = "UPDATE stock_item SET name = ?3, folded = ?4 WHERE kind = ?1 AND folded = ?2";

/// The table of a kind that has one of its own.
struct KindTable {
    const char* select;
    const char* erase;
    const char* rename;
};
constexpr std::array<KindTable, 3> kind_tables{{
    {"SELECT name FROM ingredient WHERE folded = ?1", "DELETE FROM ingredient WHERE folded = ?1",
     "UPDATE ingredient SET name = ?2, folded = ?3, owner = 'person' WHERE folded = ?1"},
    {"SELECT name FROM recipe WHERE folded = ?1", "DELETE FROM recipe WHERE folded = ?1",
     "UPDATE recipe SET name = ?2, folded = ?3, owner = 'person' WHERE folded = ?1"},
    {"SELECT name FROM strategy WHERE folded = ?1", "DELETE FROM strategy WHERE folded = ?1",
     "UPDATE strategy SET name = ?2, folded = ?3, owner = 'person' WHERE folded = ?1"},
}};

/// Where entries refer to others: the kind and the name of who refers, the name referred to, and how to change it.
struct ReferenceTable {
    EntryKind user;
    bool to_mixes;  ///< or to ingredients alone
    const char* select;
    const char* rename;
};
constexpr std::array<ReferenceTable, 4> reference_tables{{
    {EntryKind::mix, true,
     "SELECT r.name, p.part_of, p.recipe_id, p.position FROM recipe_part p JOIN recipe r ON r.id = p.recipe_id"
     " ORDER BY r.folded, p.position",
     "UPDATE recipe_part SET part_of = ?3 WHERE recipe_id = ?1 AND position = ?2"},
    {EntryKind::mix, false,
     "SELECT r.name, d.dose_of, d.recipe_id, d.position FROM recipe_dose d JOIN recipe r ON r.id = d.recipe_id"
     " ORDER BY r.folded, d.position",
     "UPDATE recipe_dose SET dose_of = ?3 WHERE recipe_id = ?1 AND position = ?2"},
    {EntryKind::strategy, true,
     "SELECT s.name, f.part_of, f.strategy_id, f.feed * 1000000 + f.position FROM strategy_feed_part f"
     " JOIN strategy s ON s.id = f.strategy_id ORDER BY s.folded, f.feed, f.position",
     "UPDATE strategy_feed_part SET part_of = ?3 WHERE strategy_id = ?1 AND feed * 1000000 + position = ?2"},
    {EntryKind::strategy, false,
     "SELECT s.name, h.bait, h.strategy_id, h.position FROM strategy_hookbait h JOIN strategy s ON s.id ="
     " h.strategy_id ORDER BY s.folded, h.position",
     "UPDATE strategy_hookbait SET bait = ?3 WHERE strategy_id = ?1 AND position = ?2"},
}};

bool has_table(EntryKind kind) {
    return static_cast<std::size_t>(kind) < kind_tables.size();
}

const KindTable& table_of(EntryKind kind) {
    return kind_tables.at(static_cast<std::size_t>(kind));
}

/// The folded name as it stands in the store: of an entry whose name was mended when it was read, that one.
std::string folded_in_store(StoreConnection& connection, EntryKind kind, std::string_view name) {
    if (!has_table(kind) || Query(connection, table_of(kind).select, folded_name(name)).next())
        return folded_name(name);
    const char* table = kind == EntryKind::mix ? "recipe" : name_of(kind).data();
    return folded_name(unmended_name(connection, table, name).value_or(std::string(name)));
}

/// Calls `found(table, user's name, id, position)` for each reference to that entry.
template <class Found>
void each_reference(StoreConnection& connection, EntryKind kind, const std::string& folded, Found&& found) {
    const bool ingredient = kind == EntryKind::ingredient;
    if (!ingredient && kind != EntryKind::mix) return;
    if (!ingredient && Query(connection, kind_tables[0].select, folded).next()) return;
    for (const ReferenceTable& table : reference_tables) {
        if (!ingredient && !table.to_mixes) continue;
        Query row(connection, table.select);
        while (row.next())
            if (folded_name(row.text(1)) == folded) found(table, row.name(0), row.whole(2), row.whole(3));
    }
}

}  // namespace

void rename_references(StoreConnection& connection, EntryKind kind, const std::string& folded, const std::string& to) {
    struct Place {
        const ReferenceTable* table;
        std::int64_t id, position;
    };
    std::vector<Place> places;
    each_reference(connection, kind, folded,
                   [&](const ReferenceTable& table, const std::string&, std::int64_t id, std::int64_t position) {
                       places.push_back({&table, id, position});
                   });
    for (const Place& place : places) Query(connection, place.table->rename, place.id, place.position, to).run();
}

void forget_gone(StoreConnection& connection, EntryKind kind, const std::string& folded) {
    Query(connection, delete_gone, name_of(kind), folded).run();
}

void stamp_put(StoreConnection& connection, EntryKind kind, const std::string& folded) {
    const bool is_there = has_table(kind) ? Query(connection, table_of(kind).select, folded).next()
                                          : Query(connection, select_one_written, name_of(kind), folded).next();
    is_there ? stamp(connection, name_of(kind), folded) : stamp_new(connection, name_of(kind), folded);
}

std::vector<WrittenEntry> EntryRegister::written(EntryKind kind) const {
    return connection_->guarded([&] {
        std::vector<WrittenEntry> entries;
        Query row(*connection_, select_written, name_of(kind));
        while (row.next()) entries.push_back({row.name(0), row.text(1)});
        return entries;
    });
}

std::optional<WrittenEntry> EntryRegister::find_written(EntryKind kind, std::string_view name) const {
    return connection_->guarded([&]() -> std::optional<WrittenEntry> {
        Query row(*connection_, select_one_written, name_of(kind), folded_name(name));
        if (!row.next()) return std::nullopt;
        return WrittenEntry{row.name(0), row.text(1)};
    });
}

std::optional<std::string> EntryRegister::find_name(EntryKind kind, std::string_view name) const {
    if (!has_table(kind)) {
        auto found = find_written(kind, name);
        return found ? std::optional(std::move(found->name)) : std::nullopt;
    }
    return connection_->guarded([&]() -> std::optional<std::string> {
        Query row(*connection_, table_of(kind).select, folded_in_store(*connection_, kind, name));
        return row.next() ? std::optional(row.name(0)) : std::nullopt;
    });
}

std::optional<std::string> EntryRegister::became(EntryKind kind, std::string_view name) const {
    return connection_->guarded([&]() -> std::optional<std::string> {
        Query row(*connection_, select_became, name_of(kind), folded_name(name));
        return row.next() ? std::optional(row.text(0)) : std::nullopt;
    });
}

std::string EntryRegister::told_of_gone(EntryKind kind, std::string_view name) const {
    const auto now = became(kind, name);
    if (!now) return {};
    if (!now->empty()) return "it is called " + in_quotes(*now) + " now";
    return "it was removed; to have it back: baitwright " + command_word(kind) + " restore \"" + std::string(name) +
           "\"";
}

std::vector<std::string> EntryRegister::former_names(EntryKind kind, std::string_view name) const {
    return connection_->guarded([&] {
        std::vector<std::string> names;
        Query row(*connection_, select_former, name_of(kind), folded_name(name));
        while (row.next()) names.push_back(row.text(0));
        return names;
    });
}

std::vector<NamedEntry> EntryRegister::users_of(EntryKind kind, std::string_view name) const {
    return connection_->guarded([&] {
        std::vector<NamedEntry> users;
        each_reference(*connection_, kind, folded_in_store(*connection_, kind, name),
                       [&](const ReferenceTable& table, const std::string& user, std::int64_t, std::int64_t) {
                           for (const NamedEntry& known : users)
                               if (known.kind == table.user && known.name == user) return;
                           users.push_back({table.user, user});
                       });
        return users;
    });
}

void EntryRegister::put_written(EntryKind kind, const WrittenEntry& entry, EntryOwner owner) {
    connection_->require_change();
    connection_->guarded([&] {
        const std::string folded = folded_name(entry.name);
        if (owner == EntryOwner::person) stamp_put(*connection_, kind, folded);
        Query(*connection_, upsert_written, name_of(kind), folded, entry.name, entry.text, word_of(owner_words, owner))
            .run();
        forget_gone(*connection_, kind, folded);
    });
}

void EntryRegister::follow_in_text(EntryKind kind, const WrittenEntry& entry) {
    connection_->require_change();
    connection_->guarded(
        [&] { Query(*connection_, follow_in_written, name_of(kind), folded_name(entry.name), entry.text).run(); });
}

void EntryRegister::remove(EntryKind kind, std::string_view name) {
    connection_->require_change();
    connection_->guarded([&] {
        const std::string folded = folded_in_store(*connection_, kind, name);
        if (kind == EntryKind::ingredient) Query(*connection_, keep_old_prices, folded).run();
        if (has_table(kind))
            Query(*connection_, table_of(kind).erase, folded).run();
        else
            Query(*connection_, delete_written, name_of(kind), folded).run();
        Query(*connection_, put_gone, name_of(kind), folded, name, "", "").run();
        stamp_gone(*connection_, name_of(kind), folded);
    });
}

void EntryRegister::rename(EntryKind kind, std::string_view from, const std::string& to) {
    connection_->require_change();
    connection_->guarded([&] {
        const std::string old = folded_in_store(*connection_, kind, from), folded = folded_name(to);
        rename_references(*connection_, kind, old, to);
        if (has_table(kind))
            Query(*connection_, table_of(kind).rename, old, to, folded).run();
        else
            Query(*connection_, rename_written, name_of(kind), old, to, folded).run();
        Query(*connection_, rename_retired, name_of(kind), old, to, folded).run();
        if (kind == EntryKind::ingredient) Query(*connection_, rename_kept_prices, old, folded).run();
        if (kind == EntryKind::ingredient || kind == EntryKind::mix)
            Query(*connection_, rename_item, name_of(kind), old, to, folded).run();
        rename_logged(*connection_, kind, folded_name(from), to);
        if (old == folded) {
            stamp(*connection_, name_of(kind), old);
            return;
        }
        if (kind == EntryKind::ingredient) Query(*connection_, move_packs_stamp, old, folded).run();
        stamp_gone(*connection_, name_of(kind), old);
        stamp_new(*connection_, name_of(kind), folded);
        Query(*connection_, follow_gone, name_of(kind), old, to, folded).run();
        Query(*connection_, put_gone, name_of(kind), old, from, to, folded).run();
        forget_gone(*connection_, kind, folded);
    });
}

void EntryRegister::take_prices_back(std::string_view ingredient) {
    connection_->require_change();
    connection_->guarded([&] {
        const std::string folded = folded_in_store(*connection_, EntryKind::ingredient, ingredient);
        Query(*connection_, return_old_prices, folded).run();
        Query(*connection_, delete_kept_prices, folded).run();
    });
}

}  // namespace baitwright
