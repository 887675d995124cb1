#include "library/merged_stores.h"
#include "library/own_entries.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <algorithm>
#include <array>
#include <map>

#include "files/library_file.h"
#include "library/change_library.h"
#include "library/change_shed.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr const char* begun = R"toml(
[[ingredient]]
name = "brown crumb"
kind = "base"
loose_density = "400 g/l"
absorption = "0.6 g/g"
[[ingredient]]
name = "maize meal"
kind = "base"
loose_density = "400 g/l"
absorption = "0.6 g/g"
[[ingredient]]
name = "fishmeal"
kind = "base"
loose_density = "400 g/l"
absorption = "0.6 g/g"
[[feel]]
name = "firm"
aim = 1.1
below = 1.2
)toml";

constexpr std::array kinds{EntryKind::ingredient, EntryKind::mix, EntryKind::strategy, EntryKind::venue};

void put_text(Store& store, const std::string& text, Date on) {
    const LibraryFile file = read_library_file(text, "test");
    if (!file.faults.empty()) throw InputError(file.faults);
    put_file(store, file, text, on);
}

}  // namespace

ChangedStore::ChangedStore(const std::filesystem::path& path, unsigned seed)
    : store(Store::open(path)), dice_(seed), seed_(seed) {}

void ChangedStore::begin(const std::filesystem::path& path) {
    Store store = Store::open(path);
    const Date on = parse_date("2026-01-01");
    put_text(store, begun, on);
    Recipe mix{"silt bed", "firm", {}, {}, {}, {}, {}, {}};
    mix.parts.push_back({"brown crumb", Share{1}, Preparation::as_bought});
    put_recipes(store, {mix}, on);
    put_text(store, "[[venue]]\nname = \"mill pool\"\n[[venue.ban]]\nof = \"fishmeal\"\n", on);
}

int ChangedStore::below(int end) {
    return std::uniform_int_distribution<int>(0, end - 1)(dice_);
}

std::string ChangedStore::one_of(const std::vector<std::string>& names) {
    if (names.empty()) throw NotFound("none", "there is none", "make one");
    return names[static_cast<std::size_t>(below(static_cast<int>(names.size())))];
}

std::string ChangedStore::free_name() {
    static const std::vector<std::string> names{"a", "b", "c d", "M", "x'\"", "Zander mix", "\xF0\x9F\x90\x9F"};
    return one_of(names);
}

std::string ChangedStore::note() {
    return "note " + std::to_string(seed_) + "." + std::to_string(++made_);
}

Date ChangedStore::day() {
    return parse_date("2026-02-01") + std::chrono::days(below(20));
}

void ChangedStore::edit_ingredient() {
    Ingredient ingredient;
    if (below(3) == 0) {
        ingredient = store.ingredient(one_of(store.ingredient_names()));
        ingredient.name = free_name();
        if (store.entries().find_name(EntryKind::mix, ingredient.name)) return;
    } else {
        ingredient = store.ingredient(one_of(store.ingredient_names()));
    }
    ingredient.note = note();
    put_ingredients(store, {ingredient}, day());
}

void ChangedStore::edit_mix() {
    const std::string name = below(3) == 0 ? free_name() : one_of(store.recipe_names());
    if (store.entries().find_name(EntryKind::ingredient, name)) return;
    Recipe mix{name, "firm", {}, {}, {}, {}, {}, {}};
    mix.note = note();
    for (int parts = 1 + below(2); parts > 0; --parts)
        mix.parts.push_back({one_of(names_of_kind(store, kinds.at(static_cast<std::size_t>(below(2))))),
                             Share{1.0 + below(3)}, Preparation::as_bought});
    put_recipes(store, {mix}, day());
}

void ChangedStore::edit_strategy() {
    const std::string text = "[[strategy]]\nname = \"" + std::string(below(2) == 0 ? "far bank" : "near bank") +
                             "\"\nlength = \"5 h\"\nnote = \"" + note() +
                             "\"\n[[strategy.feed]]\nat = \"start\"\nform = \"cup\"\nsize = \"250 ml\"\ncount = 2\n"
                             "what = [{ of = \"" +
                             one_of(names_of_kind(store, kinds.at(static_cast<std::size_t>(below(2))))) +
                             "\" }]\nfeel = \"firm\"\n";
    put_text(store, text, day());
}

void ChangedStore::edit_venue() {
    const std::string name = below(2) == 0 ? "mill pool" : "long pit";
    put_text(store,
             "[[venue]]\nname = \"" + name + "\"\nnote = \"" + note() + "\"\n[[venue.ban]]\nof = \"" +
                 one_of(std::vector<std::string>{"brown crumb", "maize meal", "fishmeal"}) + "\"\n",
             day());
}

void ChangedStore::rename_some() {
    const EntryKind kind = kinds.at(static_cast<std::size_t>(below(4)));
    rename_entry(store, kind, one_of(names_of_kind(store, kind)), free_name());
}

void ChangedStore::remove_some() {
    const EntryKind kind = kinds.at(static_cast<std::size_t>(below(4)));
    remove_entry(store, kind, one_of(names_of_kind(store, kind)), day());
}

void ChangedStore::restore_some() {
    restore_entry(store, kinds.at(static_cast<std::size_t>(below(2))), below(2) == 0 ? free_name() : "brown crumb", {},
                  day());
}

void ChangedStore::tell_price() {
    const std::string name = one_of(store.ingredient_names());
    store.change([&] {
        store.put_price(name, {(1.0 + below(2)) * kilogram, Money(100 + below(300), currency_named("GBP")), day(),
                               below(2) == 0 ? "the mill" : ""});
    });
}

void ChangedStore::buy() {
    Arrival arrival{one_of(store.ingredient_names()), StockKind::ingredient, {}};
    arrival.lot.got_on = day();
    arrival.lot.left = {1000 + below(5000)};
    if (below(2) == 0) arrival.lot.best_before = arrival.lot.got_on + std::chrono::days(below(99));
    const bool noted = below(3) == 0;
    const std::string mark = "phone " + std::to_string(below(3));  // the same in every store, now and then
    store.change([&] {
        if (noted && store.shed().knows_mark(mark)) return;
        const StockReceipt receipt = store.shed().add(Happening::bought, arrival);
        if (noted) store.shed().note_mark(mark, receipt.entry);
    });
}

void ChangedStore::use() {
    const StockItem item = *store.shed().find(one_of(store.shed().names()));
    take(store, below(4) == 0 ? Happening::wasted : Happening::used,
         {item.name, {1 + item.left.count * (1 + below(4)) / 4}}, {day() + std::chrono::days(20), {}});
}

void ChangedStore::book() {
    const StockItem item = *store.shed().find(one_of(store.shed().names()));
    store.change([&] {
        store.shed().book({{item.name, {1 + item.left.count / 2}}}, "far bank", day() + std::chrono::days(20));
    });
}

void ChangedStore::count_some() {
    const StockItem item = *store.shed().find(one_of(store.shed().names()));
    count(store, {item.name, item.kind, {below(8000)}, std::nullopt}, {day() + std::chrono::days(20), {}});
}

void ChangedStore::undo_stock() {
    undo(store, below(3) == 0 ? std::optional<std::int64_t>(1 + below(9)) : std::nullopt,
         day() + std::chrono::days(30));
}

void ChangedStore::log_session() {
    LoggedSession session{below(2) == 0 ? "far bank" : "near bank"};
    session.start = "09:30";
    session.length = 5.0 * hour;
    session.anglers = 1;
    session.venue = "mill pool";
    session.note = note();
    LoggedMix mix{"silt bed", "firm", Ratio(1.1), 0.1, 1.0 * kilogram, 0.6 * kilogram, Mass{}, {}};
    mix.parts.push_back({"brown crumb", 1.0 * kilogram, std::nullopt});
    store.change([&] {
        const Date on = day();
        const std::int64_t id = store.log().add({0, on, 0, session});
        store.log().add({0, on, id, LoggedCatch{std::nullopt, "bream", 1 + below(3), std::nullopt}});
        store.log().add({0, on, id, mix});
    });
}

void ChangedStore::log_alone() {
    const std::string name = one_of(store.ingredient_names());
    store.change([&] {
        store.log().add({0, day(), 0, LoggedUse{name, (1.0 + below(5)) * kilogram}});
        store.log().add({0, day(), 0, LoggedBag{name}});
    });
}

void ChangedStore::undo_log() {
    store.change(
        [&] { store.log().undo(below(2) == 0 ? std::nullopt : std::optional<std::int64_t>(1 + below(9)), day()); });
}

void ChangedStore::believe() {
    store.change([&] { store.log().believe(1 + below(9), below(2) == 0); });
}

void ChangedStore::learn() {
    const double any = below(100) / 100.0;
    LearntWater water{any, any / 2, {}, 1, {}};
    water.bags.push_back({one_of(store.ingredient_names()), any, any, 1 + below(5), 0, 0});
    water.factor = {0.1, 0.1, 0.2, any};
    store.change([&] {
        store.log().keep_learnt_before({});
        store.log().put_learnt(water, {{one_of(store.recipe_names()), LearntFactor{any, 0.1, 2}, {}, {}}});
    });
}

void ChangedStore::tell_usual() {
    const std::string venue = below(2) == 0 ? "mill pool" : "long pit";
    store.change([&] {
        if (below(2) == 0)
            store.put_usual("pump", {std::to_string(60 + below(3)) + "ml"});
        else if (below(3) == 0)
            store.put_usual("venue", {});
        else if (store.entries().find_name(EntryKind::venue, venue))
            store.put_usual("venue", {venue});
    });
}

void ChangedStore::change(int times) {
    using Work = void (ChangedStore::*)();
    static constexpr Work all[] = {&ChangedStore::edit_ingredient,
                                   &ChangedStore::edit_mix,
                                   &ChangedStore::edit_mix,
                                   &ChangedStore::edit_strategy,
                                   &ChangedStore::edit_venue,
                                   &ChangedStore::rename_some,
                                   &ChangedStore::rename_some,
                                   &ChangedStore::remove_some,
                                   &ChangedStore::remove_some,
                                   &ChangedStore::restore_some,
                                   &ChangedStore::tell_price,
                                   &ChangedStore::buy,
                                   &ChangedStore::buy,
                                   &ChangedStore::use,
                                   &ChangedStore::use,
                                   &ChangedStore::book,
                                   &ChangedStore::count_some,
                                   &ChangedStore::undo_stock,
                                   &ChangedStore::log_session,
                                   &ChangedStore::log_alone,
                                   &ChangedStore::undo_log,
                                   &ChangedStore::believe,
                                   &ChangedStore::learn,
                                   &ChangedStore::tell_usual};
    for (; times > 0; --times) {
        try {
            (this->*all[below(std::size(all))])();
        } catch (const StorageError&) {
            throw;
        } catch (const Error&) {  // refused: in use, taken, short of stock, nothing to undo
        }
    }
}

namespace {

/// A column as a dump has it; empty where it is a row number of this store.
std::string column_by_marks(const std::string& table, const std::string& column) {
    static const std::map<std::string, std::string> owners{{"ingredient_id", "ingredient"},
                                                           {"recipe_id", "recipe"},
                                                           {"strategy_id", "strategy"},
                                                           {"item_id", "stock_item"}};
    const auto looked_up = [&](const std::string& what, const std::string& of) {
        return "(SELECT x." + what + " FROM " + of + " x WHERE x.id = t." + column + ")";
    };
    if (column == "id") return {};
    if (const auto owner = owners.find(column); owner != owners.end()) return looked_up("folded", owner->second);
    if (column == "lot_id") return looked_up("mark", "stock_lot");
    if (column == "entry_id" || column == "undoes" || column == "session_id")
        return looked_up("mark", table.rfind("log_", 0) == 0 ? "log_entry" : "stock_entry");
    return "t." + column;
}

std::vector<std::string> texts_in(SQLite::Database& database, const std::string& sql) {
    std::vector<std::string> texts;
    SQLite::Statement rows(database, sql);
    while (rows.executeStep()) texts.push_back(rows.getColumn(0).getString());
    return texts;
}

void add_notes(const std::string& text, std::set<std::string>& notes) {
    for (std::size_t at = text.find("note "); at != std::string::npos; at = text.find("note ", at + 1))
        notes.insert(text.substr(at, text.find_first_of("\"'", at) - at));
}

}  // namespace

std::vector<std::string> dump_by_marks(const std::filesystem::path& store) {
    SQLite::Database database(store.string(), SQLite::OPEN_READONLY);
    std::vector<std::string> dump;
    for (const std::string& table :
         texts_in(database, "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%'")) {
        std::string values;
        for (const std::string& name : texts_in(database, "SELECT name FROM pragma_table_info('" + table + "')"))
            if (const std::string column = column_by_marks(table, name); !column.empty())
                values += (values.empty() ? "quote(" : " || ' ' || quote(") + column + ")";
        for (const std::string& row : texts_in(database, "SELECT DISTINCT " + values + " FROM " + table + " t"))
            dump.push_back(table + ": " + row);
    }
    std::sort(dump.begin(), dump.end());
    return dump;
}

std::set<std::string> acknowledged(const Store& store, const std::filesystem::path& path) {
    std::set<std::string> all;
    for (const EntryKind kind : kinds)
        for (const std::string& name : names_of_kind(store, kind)) add_notes(text_of_entry(store, kind, name), all);
    SQLite::Database database(path.string(), SQLite::OPEN_READONLY);
    for (const std::string& text :
         texts_in(database, "SELECT text FROM retired UNION ALL SELECT note FROM log_session"))
        add_notes(text + "\"", all);
    for (const char* table : {"stock_lot", "stock_entry", "log_entry"})
        for (const std::string& mark : texts_in(database, "SELECT mark FROM " + std::string(table)))
            all.insert(std::string(table) + " " + mark);
    return all;
}

}  // namespace baitwright
