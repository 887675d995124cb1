#include "store/schema.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <set>

#include "store/backup_seal.h"
#include "store/other_store.h"
#include "store/random_entries.h"
#include "store/store.h"
#include "store/temporary_folder.h"
#include "store/upgrade_store.h"

using namespace baitwright;

namespace {

std::vector<std::string> column(SQLite::Database& database, const std::string& sql) {
    std::vector<std::string> values;
    SQLite::Statement rows(database, sql);
    while (rows.executeStep()) values.push_back(rows.getColumn(0).getString());
    return values;
}

// The tables as SQL, and the numbers in the file's header.
std::string dump(const std::filesystem::path& path) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
    std::string text;
    for (const char* pragma : {"application_id", "user_version"})
        text +=
            "PRAGMA " + std::string(pragma) + " = " + column(database, "PRAGMA " + std::string(pragma)).front() + ";\n";
    for (const std::string& sql :
         column(database, "SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY rowid"))
        text += sql + ";\n";
    return text;
}

std::string dump_kept(int version) {
    return whole_file(std::string(BAITWRIGHT_SOURCE_DIR "/tests/store/schema_v") + std::to_string(version) + ".sql");
}

void make_from(const std::string& sql, const std::filesystem::path& path) {
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    database.exec(sql);
}

void fill(const std::filesystem::path& path) {
    Store store = Store::open(path);
    CHECK(rc::check("fill", [&] {
        store.change([&] {
            store.put(any_ingredient(any_text()), EntryOwner::shipped);
            store.put(any_recipe(any_text()), EntryOwner::person);
            store.put(any_strategy(any_text()), EntryOwner::person);
        });
    }));
}

std::set<std::string> files_in(const std::filesystem::path& folder) {
    std::set<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) names.insert(entry.path().filename());
    return names;
}

}  // namespace

TEST_CASE("a new store has just the tables of the dump that is kept of its version") {
    const TemporaryFolder folder;
    Store::open(folder / "library.db");
    CHECK(dump(folder / "library.db") == dump_kept(newest_version()));
}

TEST_CASE("a store of every old version opens, with its tables as new") {
    for (const Migration& step : migrations()) {
        const TemporaryFolder folder;
        make_from(dump_kept(step.version), folder / "library.db");
        if (step.version >= 8) make_from("INSERT INTO meta VALUES ('clock', '1')", folder / "library.db");
        Store store = Store::open(folder / "library.db");
        store.change([&] { store.put(ingredient_named("coarse meal"), EntryOwner::person); });
        CHECK(store.find_ingredient("coarse meal"));
        CHECK(dump(folder / "library.db") == dump_kept(newest_version()));
    }
}

TEST_CASE("an ingredient and a mix of version 1 are there after the upgrade, and a strategy can join them") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    make_from(dump_kept(1), path);
    SQLite::Database(path.string(), SQLite::OPEN_READWRITE)
        .exec(
            "INSERT INTO ingredient (name, folded, kind, colour, solute, note, owner)"
            " VALUES ('Coarse Meal', 'coarse meal', 'base', '', '', '', 'person');"
            "INSERT INTO recipe (name, folded, feel, purpose, avoid, why, note, owner)"
            " VALUES ('river mix', 'river mix', 'firm', '', '', '', '', 'person');"
            "INSERT INTO recipe_part VALUES (1, 1, 'Coarse Meal', 'mass', 0.4, 'as_bought')");
    Store store = Store::open(path);
    CHECK(store.ingredient_names() == std::vector<std::string>{"Coarse Meal"});
    REQUIRE(store.find_recipe("river mix"));
    CHECK(std::get<Mass>(store.find_recipe("river mix")->parts.at(0).amount).si() == 0.4);
    store.change([&] { store.put(strategy_named("far bank"), EntryOwner::person); });
    CHECK(store.find_strategy("far bank"));
    CHECK(std::filesystem::exists(path.string() + ".before-v" + std::to_string(newest_version())));
}

TEST_CASE("a strategy and a lot of version 4 are there after the upgrade, with nothing said that was not said") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    make_from(dump_kept(4), path);
    SQLite::Database(path.string(), SQLite::OPEN_READWRITE)
        .exec(
            "INSERT INTO strategy VALUES (1, 'Far Bank', 'far bank', '', '', '', '', 18000, 0.1, 2.5, NULL, '', NULL,"
            " NULL, 12, NULL, 'person');"
            "INSERT INTO strategy_feed VALUES (1, 1, 'put-in', NULL, 0, NULL, 'cup', 'volume', 0.00025, 3, 'soft');"
            "INSERT INTO strategy_feed_part VALUES (1, 1, 1, 'silt bed', 1, 'as_bought');"
            "INSERT INTO stock_item VALUES (1, 'silt bed', 'silt bed', 'mix', '2026-05-01', 0);"
            "INSERT INTO stock_lot VALUES (1, 1, 'frozen', '2026-05-01', NULL, NULL, 0, 0, NULL, NULL, '');"
            "INSERT INTO stock_entry VALUES (1, 'kept', '2026-05-01', 1, '', NULL);"
            "INSERT INTO stock_movement VALUES (1, 1, 600000)");
    Store store = Store::open(path);
    const auto strategy = store.find_strategy("far bank");
    REQUIRE(strategy);
    CHECK_FALSE((strategy->air.temperature || strategy->air.humidity || strategy->air.wind || strategy->air.sun));
    CHECK(strategy->feeds.at(0).when.after.empty());
    CHECK(strategy->feeds.at(0).parts.at(0).feel.empty());
    CHECK(strategy->feeds.at(0).feel == "soft");
    CHECK(store.shed().find("silt bed")->lots.at(0).feel.empty());
    Arrival arrival{"silt bed", StockKind::mix, {}};
    arrival.lot.state = StockState::frozen;
    arrival.lot.got_on = parse_date("2026-05-02");
    arrival.lot.left = {300000};
    arrival.lot.feel = "soft";
    StockReceipt receipt;
    store.change([&] { receipt = store.shed().add(Happening::kept, arrival); });
    CHECK(receipt.lines.at(0).lot.feel == "soft");
    CHECK(Store::open(path).shed().find("silt bed")->lots.at(1).feel == "soft");
}

TEST_CASE("every table is strict") {
    const TemporaryFolder folder;
    Store::open(folder / "library.db");
    SQLite::Database database((folder / "library.db").string());
    CHECK(column(database,
                 "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table'"
                 " AND name NOT LIKE 'sqlite_%' AND NOT strict")
              .empty());
    CHECK(database.execAndGet("SELECT count(*) FROM pragma_table_list WHERE strict").getInt() == 40);
}

TEST_CASE("a full store passes SQLite's own checks, in write-ahead mode") {
    const TemporaryFolder folder;
    fill(folder / "library.db");
    SQLite::Database database((folder / "library.db").string());
    CHECK(column(database, "PRAGMA integrity_check") == std::vector<std::string>{"ok"});
    CHECK(column(database, "PRAGMA foreign_key_check").empty());
    CHECK(column(database, "PRAGMA journal_mode") == std::vector<std::string>{"wal"});
}

TEST_CASE("rows without an ingredient, a recipe or a strategy cannot be: they go with it") {
    const TemporaryFolder folder;
    fill(folder / "library.db");
    SQLite::Database database((folder / "library.db").string(), SQLite::OPEN_READWRITE);
    database.exec("PRAGMA foreign_keys = ON; DELETE FROM ingredient; DELETE FROM recipe; DELETE FROM strategy");
    for (const char* table : {"ingredient_property", "pack", "caution", "recipe_part", "recipe_dose", "strategy_feed",
                              "strategy_feed_part", "strategy_hookbait"})
        CHECK(database.execAndGet("SELECT count(*) FROM " + std::string(table)).getInt() == 0);
}

TEST_CASE("counting the rows of ingredient counts the ingredients") {
    const TemporaryFolder folder;
    fill(folder / "library.db");
    const std::size_t names = Store::open(folder / "library.db").ingredient_names().size();
    SQLite::Database database((folder / "library.db").string());
    CHECK(static_cast<std::size_t>(database.execAndGet("select count(*) from ingredient").getInt()) == names);
    CHECK(names > 10);
}

TEST_CASE("reading never sorts: the keys give the order") {
    const TemporaryFolder folder;
    Store::open(folder / "library.db");
    SQLite::Database database((folder / "library.db").string());
    for (const char* sql :
         {"SELECT name FROM ingredient ORDER BY folded",
          "SELECT word FROM caution WHERE ingredient_id = 1 ORDER BY position",
          "SELECT part_of FROM recipe_part WHERE recipe_id = 1 ORDER BY position",
          "SELECT name FROM strategy ORDER BY folded",
          "SELECT form FROM strategy_feed WHERE strategy_id = 1 ORDER BY position",
          "SELECT part_of FROM strategy_feed_part WHERE strategy_id = 1 AND feed = 1 ORDER BY position",
          "SELECT bait FROM strategy_hookbait WHERE strategy_id = 1 ORDER BY position",
          "SELECT name FROM feel ORDER BY below, folded",
          "SELECT text FROM retired WHERE kind = 'mix' AND folded = 'a' ORDER BY id",
          "SELECT value FROM usual ORDER BY key, position",
          "SELECT name FROM written WHERE kind = 'venue' ORDER BY folded",
          "SELECT name FROM shop ORDER BY folded",
          "SELECT name FROM stock_item ORDER BY folded",
          "SELECT id FROM stock_lot WHERE item_id = 1 AND left_mg > 0"
          " ORDER BY ifnull(best_before, '~'), got_on, id",
          "SELECT e.id FROM log_entry e LEFT JOIN log_entry u ON u.undoes = e.id WHERE e.id BETWEEN 1 AND 9"
          " ORDER BY e.id",
          "SELECT entry_id FROM log_mix WHERE entry_id BETWEEN 1 AND 9 ORDER BY entry_id",
          "SELECT name FROM log_part WHERE entry_id BETWEEN 1 AND 9 ORDER BY entry_id, position",
          "SELECT id FROM log_entry WHERE session_id = 1 ORDER BY id",
          "SELECT mean FROM learnt_water WHERE folded = 'a' ORDER BY part",
          "SELECT mean FROM learnt_mix ORDER BY folded, part",
          "SELECT item_id FROM stock_lot WHERE left_mg > 0"
          " ORDER BY ifnull(best_before, '~'), got_on, id"}) {
        SQLite::Statement plan(database, "EXPLAIN QUERY PLAN " + std::string(sql));
        while (plan.executeStep()) CHECK(plan.getColumn(3).getString().find("TEMP B-TREE") == std::string::npos);
    }
}

TEST_CASE("an upgrade copies the store beside it and keeps what is in it") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    fill(path);
    const std::vector<std::string> names = Store::open(path).ingredient_names();
    const std::string before = dump(path);
    std::vector<Migration> steps = migrations();
    steps.push_back({newest_version() + 1, "CREATE TABLE shed (id INTEGER PRIMARY KEY) STRICT"});
    {
        SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
        upgrade(database, path, steps);
        CHECK(version_of(database) == steps.back().version);
    }
    const std::filesystem::path copy = path.string() + ".before-v" + std::to_string(steps.back().version);
    CHECK(seal_of(copy) == Seal::holds);
    CHECK(dump(copy) == before);
    CHECK(Store::open(copy).ingredient_names() == names);
    CHECK(dump(path).find("CREATE TABLE shed") != std::string::npos);
}

TEST_CASE("another store of an older version is read as one of this, and nothing of that stays behind") {
    const TemporaryFolder folder;
    const std::filesystem::path older = folder / "older.db", ours = folder / "ours.db";
    make_from(dump_kept(7), older);
    Store::open(ours);
    const std::set<std::string> before = files_in(folder / "");
    {
        OtherStore other(older, ours);
        other.refuse_damaged();
        CHECK(dump(other.path()) == dump_kept(newest_version()));
    }
    CHECK(files_in(folder / "") == before);
    CHECK(dump(older) == dump_kept(7));
}

TEST_CASE("an upgrade that fails halfway leaves the store as it was") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    fill(path);
    const std::string before = dump(path);
    std::vector<Migration> steps = migrations();
    steps.push_back({newest_version() + 1, "CREATE TABLE shed (id INTEGER PRIMARY KEY) STRICT; no such statement"});
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
    CHECK_THROWS_AS(upgrade(database, path, steps), SQLite::Exception);
    CHECK(dump(path) == before);
}
