// What the database itself keeps of the log: that nothing is changed or erased, that names follow a rename, and that
// numbers from elsewhere are named.
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <catch2/catch.hpp>

#include "quantities/fault.h"
#include "quantities/fault_of.h"
#include "quantities/units.h"
#include "store/random_entries.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

const Date kept_day = parse_date("2026-03-01");

/// One entry of every kind, numbered from 1 in the order of their kinds; the last is undone by an eleventh.
void log_one_of_each(Store& store) {
    LoggedMix mix{"silt bed", "firm", 1.2, 0.05, 1.0 * kilogram, 0.6 * kilogram, 0.02 * kilogram};
    mix.parts = {{"brown crumb", 0.4 * kilogram, 0.09}, {"maize meal", 0.6 * kilogram}};
    LoggedSession session{"open carpet"};
    session.length = 5.0 * hour;
    session.venue = "the old pit";
    session.cost = parse_money("£4.20");
    session.water = Temperature::from_celsius(12);
    LoggedLook look{"silt bed"};
    look.form = 55.0 * millimetre;
    look.holds = 40.0 * second;
    look.breaks_at = 0.6 * metre;
    look.carpet = 1.1 * metre;
    const std::vector<LoggedThing> things{session,
                                          LoggedPutIn{5.0 * minute, "silt bed"},
                                          LoggedUse{"brown crumb", 300.0 * gram},
                                          LoggedCatch{1.0 * hour, "bream", 3, 2.0 * kilogram},
                                          mix,
                                          LoggedSoak{"brown crumb", 100.0 * gram, 138.0 * gram, 6.0 * minute},
                                          LoggedWeight{"silt bed", "firm", 250.0 * millilitre, 200.0 * gram},
                                          look,
                                          LoggedBag{"brown crumb"},
                                          LoggedBag{"maize meal"}};
    store.change([&] {
        std::int64_t first = 0;
        for (const LoggedThing& what : things) {
            const std::int64_t id = store.log().add({0, kept_day, first, what});
            if (first == 0) first = id;
        }
        store.log().undo({}, kept_day);
    });
}

std::vector<std::string> texts_in(SQLite::Database& database, const std::string& sql) {
    std::vector<std::string> texts;
    SQLite::Statement rows(database, sql);
    while (rows.executeStep()) texts.push_back(rows.getColumn(0).getString());
    return texts;
}

std::vector<std::string> subjects(const Store& store) {
    std::vector<std::string> names;
    for (const LogEntry& entry : store.log().all_entries()) names.push_back(subject_of(entry.what));
    return names;
}

using Texts = std::vector<std::string>;

}  // namespace

TEST_CASE(
    "the database refuses to change or erase anything of an entry but its names, its mark and whether it is believed") {
    const TemporaryFolder folder;
    const auto path = folder / "library.db";
    {
        Store store = Store::open(path);
        log_one_of_each(store);
    }
    SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
    const Texts tables =
        texts_in(database, "SELECT name FROM sqlite_schema WHERE type = 'table' AND name LIKE 'log\\_%' ESCAPE '\\'");
    CHECK(tables.size() == 9);
    int columns = 0;
    for (const std::string& table : tables) {
        CHECK(database.execAndGet("SELECT count(*) FROM " + table).getInt() > 0);
        CHECK_THROWS_AS(database.exec("DELETE FROM " + table), SQLite::Exception);
        for (const std::string& column : texts_in(database, "SELECT name FROM pragma_table_info('" + table + "')")) {
            const bool may_change = column == "name" || column == "folded" || column == "believed" ||
                                    column == "mark" || column == "venue" || column == "venue_folded";
            CAPTURE(table, column);
            ++columns;
            const std::string touch = "UPDATE " + table + " SET " + column + " = " + column;
            if (may_change)
                CHECK_NOTHROW(database.exec(touch));
            else
                CHECK_THROWS_AS(database.exec(touch), SQLite::Exception);
        }
    }
    CHECK(columns > 45);
}

TEST_CASE("the log and what was learnt follow when an ingredient, a mix, a strategy or a venue is renamed") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    store.change([&] {
        store.put(ingredient_named("brown crumb"), EntryOwner::person);
        store.put(recipe_named("silt bed"), EntryOwner::person);
        store.put(strategy_named("open carpet"), EntryOwner::person);
        store.entries().put_written(EntryKind::venue, {"the old pit", "text"}, EntryOwner::person);
        store.log().put_learnt({0.1, 0.2, {{"brown crumb", -0.5, 0.1, 3}}, 1, {1, 2, 3, 4}},
                               {{"silt bed", LearntFactor{0.1, 0.2, 3}, {}, {}}});
    });
    log_one_of_each(store);
    store.change([&] {
        store.entries().rename(EntryKind::ingredient, "Brown Crumb", "Dark Crumb");
        store.entries().rename(EntryKind::mix, "silt bed", "pit bed");
        store.entries().rename(EntryKind::strategy, "open carpet", "wide carpet");
        store.entries().rename(EntryKind::venue, "the old pit", "the far pit");
    });
    CHECK(subjects(store) == Texts{"wide carpet", "pit bed", "Dark Crumb", "bream", "pit bed", "Dark Crumb", "pit bed",
                                   "pit bed", "Dark Crumb", "maize meal", ""});
    CHECK(std::get<LoggedMix>(store.log().find(5)->what).parts.at(0).of == "Dark Crumb");
    CHECK(std::get<LoggedMix>(store.log().find(5)->what).parts.at(1).of == "maize meal");
    CHECK(std::get<LoggedSession>(store.log().find(1)->what).venue == "the far pit");
    CHECK(store.learnt_water({"brown crumb"}).bags.empty());
    CHECK(store.learnt_water({"dark crumb"}).bags.at(0).name == "Dark Crumb");
    CHECK_FALSE(store.learnt_mix("silt bed"));
    CHECK(store.learnt_mix("pit bed")->cup_weight->times == 3);
}

TEST_CASE("a mix of one ingredient follows the ingredient's rename, but not where a mix has that name") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    store.change([&] {
        store.put(ingredient_named("own crumb"), EntryOwner::person);
        store.put(ingredient_named("bran"), EntryOwner::person);
        store.put(recipe_named("bran"), EntryOwner::person);
        store.log().add({0, kept_day, 0, LoggedMix{"own crumb", "firm"}});
        store.log().add({0, kept_day, 0, LoggedMix{"bran", "firm"}});
        store.log().put_learnt({}, {{"own crumb", LearntFactor{0.1, 0.2, 3}, {}, {}}});
        store.entries().rename(EntryKind::ingredient, "own crumb", "our crumb");
        store.entries().rename(EntryKind::ingredient, "bran", "wheat bran");
    });
    CHECK(subjects(store) == Texts{"our crumb", "bran"});
    REQUIRE(store.learnt_mix("our crumb"));
    CHECK(store.learnt_mix("our crumb")->cup_weight->times == 3);
}

TEST_CASE("a rename of a mix leaves the ingredient of its old name alone, and what is removed stays in the log") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    store.change([&] {
        store.put(ingredient_named("bran"), EntryOwner::person);
        store.put(recipe_named("bran"), EntryOwner::person);
        store.log().add({0, kept_day, 0, LoggedUse{"bran", 300.0 * gram}});
        store.log().add({0, kept_day, 0, LoggedMix{"bran", "firm"}});
        store.entries().rename(EntryKind::mix, "bran", "bran bed");
        store.entries().remove(EntryKind::ingredient, "bran");
    });
    CHECK(subjects(store) == Texts{"bran", "bran bed"});
}

TEST_CASE("a rename to the name of what was removed takes the place of what was learnt of that") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    store.change([&] {
        store.put(ingredient_named("brown crumb"), EntryOwner::person);
        store.log().put_learnt({0, 0, {{"bran", -0.5, 0.1, 3}, {"brown crumb", 0.7, 0.1, 4}}, 1, {1, 2, 3, 4, 5, 6}},
                               {{"old bed", LearntFactor{0.1, 0.2, 3}, {}, {}}, {"new bed", {}, LearntFactor{}, {}}});
        store.put(recipe_named("new bed"), EntryOwner::person);
        store.entries().rename(EntryKind::ingredient, "brown crumb", "bran");
        store.entries().rename(EntryKind::mix, "new bed", "old bed");
    });
    const LearntWater water = store.log().learnt_water();
    REQUIRE(water.bags.size() == 1);
    CHECK(water.bags[0].mixes == 4);
    CHECK(water.factor == std::vector<double>{1, 2, 5, 6});
    REQUIRE(store.learnt_mix("old bed"));
    CHECK_FALSE(store.learnt_mix("old bed")->cup_weight);
}

TEST_CASE("a stored number that no log has names its entry, which can be taken back; the others are read again then") {
    for (const char* sql : {"UPDATE log_session SET length = 1e300",
                            "UPDATE log_session SET anglers = 4611686018427387904",
                            "UPDATE log_session SET temperature = -1",
                            "UPDATE log_session SET cost_minor = -4611686018427387904",
                            "UPDATE log_entry SET at = 1e999 WHERE what = 'put-in'",
                            "UPDATE log_use SET amount = -1",
                            "UPDATE log_catch SET count = -1",
                            "UPDATE log_catch SET mass = 1e300",
                            "UPDATE log_mix SET wetness = -1",
                            "UPDATE log_mix SET within = 1e300",
                            "UPDATE log_mix SET dry = 1e999",
                            "UPDATE log_mix SET water = -1",
                            "UPDATE log_mix SET wetting = -1",
                            "UPDATE log_part SET mass = 1e300",
                            "UPDATE log_part SET moisture = 2",
                            "UPDATE log_soak SET dry = -1",
                            "UPDATE log_soak SET drained = -1",
                            "UPDATE log_soak SET under_water = -1",
                            "UPDATE log_soak SET temperature = 0",
                            "UPDATE log_weight SET vessel = -1",
                            "UPDATE log_weight SET mass = -1",
                            "UPDATE log_look SET size = 1e300",
                            "UPDATE log_look SET depth = -1",
                            "UPDATE log_look SET holds = 1e300",
                            "UPDATE log_look SET breaks_at = -1",
                            "UPDATE log_look SET carpet = 1e300"}) {
        CAPTURE(sql);
        const TemporaryFolder folder;
        const auto path = folder / "library.db";
        Store store = Store::open(path);
        log_one_of_each(store);
        {
            SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
            for (const std::string& trigger :
                 texts_in(database, "SELECT name FROM sqlite_schema WHERE type = 'trigger'"))
                database.exec("DROP TRIGGER " + trigger);
            CHECK(database.exec(sql) > 0);
        }
        const Fault fault = fault_of([&] { (void)store.log().entries(); });
        CHECK(fault.code == "stored-out-of-range");
        const std::size_t from = fault.hint.find("undo ");
        REQUIRE(from != std::string::npos);
        const std::int64_t bad = std::stoll(fault.hint.substr(from + 5));
        CHECK(fault.message.find("entry " + std::to_string(bad) + " ") != std::string::npos);
        CHECK(fault_of([&] { (void)store.log().find(bad); }).code == "stored-out-of-range");
        std::vector<LogEntry> taken;
        store.change([&] { taken = store.log().undo(bad, kept_day); });
        CHECK(taken.at(0).id == bad);
        CHECK_NOTHROW(store.log().entries());
        CHECK_NOTHROW(store.log().all_entries());
        CHECK(store.log().find(bad)->undone_by != 0);
    }
}

TEST_CASE("rows of the log that cannot be are damage") {
    for (const char* sql : {"UPDATE log_entry SET what = 'nothing' WHERE id = 2",
                            "UPDATE log_entry SET happened_on = 'then' WHERE id = 2",
                            "UPDATE log_session SET currency = 'XXX'", "UPDATE log_use SET measure = 'length'",
                            "UPDATE log_look SET measure = 'mass'", "UPDATE log_look SET squeeze = 'wring'",
                            "DELETE FROM log_mix", "DELETE FROM log_soak", "UPDATE log_part SET entry_id = 2"}) {
        CAPTURE(sql);
        const TemporaryFolder folder;
        const auto path = folder / "library.db";
        Store store = Store::open(path);
        log_one_of_each(store);
        {
            SQLite::Database database(path.string(), SQLite::OPEN_READWRITE);
            for (const std::string& trigger :
                 texts_in(database, "SELECT name FROM sqlite_schema WHERE type = 'trigger'"))
                database.exec("DROP TRIGGER " + trigger);
            CHECK(database.exec(sql) > 0);
        }
        CHECK(fault_of([&] { (void)store.log().entries(); }).code == "damaged-store");
    }
}
