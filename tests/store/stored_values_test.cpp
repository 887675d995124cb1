// What older programs stored and this one would not take: it is named, it can be mended, and nothing else suffers.
#include <SQLiteCpp/Database.h>

#include <catch2/catch.hpp>
#include <functional>

#include "bait/ingredient.h"
#include "bait/pack.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "day_of.h"
#include "quantities/fault_of.h"
#include "quantities/plain_words.h"
#include "quantities/units.h"
#include "store/schema.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

Ingredient crumb() {
    Ingredient crumb;
    crumb.name = "brown crumb";
    crumb.loose_density = {420.0 * gram_per_litre, 0.1, {Origin::measured, "level vessel"}};
    crumb.moisture = {0.065, 0.1, {Origin::measured, "oven"}};
    crumb.packs.push_back({1.0 * kilogram, parse_money("£2.10"), day_of("2026-03-01"), "the mill"});
    return crumb;
}

void fill_values(const std::filesystem::path& path) {
    Store store = Store::open(path);
    store.change([&] { store.put(crumb(), EntryOwner::person); });
}

void type_sql(const std::filesystem::path& path, const std::string& sql) {
    SQLite::Database(path.string(), SQLite::OPEN_READWRITE).exec(sql);
}

/// Of what an upgrade copies first.
std::string copy_name() {
    return "shed.db.before-v" + std::to_string(newest_version());
}

Pack right_price() {
    return {1.0 * kilogram, parse_money("£2.40"), day_of("2026-04-01"), "the mill"};
}

/// Finding it names it; it can be looked at to be mended, and once it is put again it is found.
template <class Entry>
void check_named_and_mended(Store& store, const std::string& name, const Entry& entry,
                            const std::function<bool()>& found, const std::function<bool()>& to_mend) {
    const Fault fault = fault_of([&] { found(); });
    CHECK(fault.code == "stored-out-of-range");
    CHECK(fault.message.find(name) != std::string::npos);
    CHECK_FALSE(fault.hint.empty());
    CHECK(to_mend());
    store.change([&] { store.put(entry, EntryOwner::person); });
    CHECK(found());
}

}  // namespace

TEST_CASE("a stored number outside its range is bad data that names the entry, and can be replaced") {
    for (const char* sql : {"UPDATE ingredient_property SET value = 1.5 WHERE key = 'moisture'",
                            "UPDATE ingredient_property SET value = -1e300 WHERE key = 'loose_density'",
                            "UPDATE ingredient_property SET spread = 1e9 WHERE key = 'moisture'",
                            "UPDATE pack SET size = 1e-303", "UPDATE pack SET price_minor = 9223372036854775807",
                            "UPDATE pack SET price_minor = -1", "UPDATE ingredient SET keeps_dry = 1e999",
                            "UPDATE ingredient_property SET value = 1e999 WHERE key = 'moisture'"}) {
        CAPTURE(sql);
        const TemporaryFolder folder;
        const auto path = folder / "shed.db";
        fill_values(path);
        type_sql(path, sql);
        Store store = Store::open(path);
        check_named_and_mended(
            store, "'brown crumb'", crumb(), [&] { return store.find_ingredient("brown crumb").has_value(); },
            [&] { return store.ingredient_to_mend("brown crumb").has_value(); });
    }
}

TEST_CASE("a stored amount of a mix outside its range is bad data that names the mix, and can be replaced") {
    const TemporaryFolder folder;
    const auto path = folder / "shed.db";
    Recipe bed;
    bed.name = "my bed";
    bed.parts.push_back({"brown crumb", 400.0 * gram, Preparation::as_bought});
    {
        Store store = Store::open(path);
        store.change([&] { store.put(bed, EntryOwner::person); });
    }
    type_sql(path, "UPDATE recipe_part SET amount = 1e300");
    Store store = Store::open(path);
    check_named_and_mended(
        store, "the mix 'my bed'", bed, [&] { return store.find_recipe("my bed").has_value(); },
        [&] { return store.recipe_to_mend("my bed").has_value(); });
}

TEST_CASE("a stored number of a strategy outside its range is bad data that names the strategy, and can be replaced") {
    Strategy day;
    day.name = "long day";
    day.length = 5.0 * hour;
    day.water = {2.0 * metre, Temperature::from_celsius(15), "", 0.02 * metre_per_second, {}};
    day.pace = {6.0, 10.0};
    day.feeds.push_back({{EveryTime{40.0 * minute}, {}, 4.0 * hour}, {{"bed"}}, FeedForm::ball, 0.045 * metre, 2, ""});
    day.hookbaits.push_back({"expander 6 mm", BitesPerHour{20}});
    for (const char* sql :
         {"UPDATE strategy SET length = 1e999", "UPDATE strategy SET length = -1", "UPDATE strategy SET spare = 1e999",
          "UPDATE strategy SET depth = -1", "UPDATE strategy SET temperature = 1e999", "UPDATE strategy SET tow = -1",
          "UPDATE strategy SET put_ins_per_hour = 0", "UPDATE strategy SET fish_per_hour = 1e9",
          "UPDATE strategy_feed SET every = 0", "UPDATE strategy_feed SET starts = -1",
          "UPDATE strategy_feed SET until = 1e999", "UPDATE strategy_feed SET size = -1e300",
          "UPDATE strategy_feed SET measure = 'mass'", "UPDATE strategy_feed SET count = 4611686018427387904",
          "UPDATE strategy_feed SET count = 0", "UPDATE strategy_feed_part SET share = 0",
          "UPDATE strategy_hookbait SET amount = 1e999"}) {
        CAPTURE(sql);
        const TemporaryFolder folder;
        const auto path = folder / "shed.db";
        {
            Store store = Store::open(path);
            store.change([&] { store.put(day, EntryOwner::person); });
            CHECK(store.find_strategy("long day"));
        }
        type_sql(path, sql);
        Store store = Store::open(path);
        check_named_and_mended(
            store, "the strategy 'long day'", day, [&] { return store.find_strategy("long day").has_value(); },
            [&] { return store.strategy_to_mend("long day").has_value(); });
    }
}

TEST_CASE("the right price mends a wrong one, in use or old, and the wrong one goes") {
    for (const char* sql :
         {"UPDATE pack SET size = 1e-303", "UPDATE pack SET price_minor = 9223372036854775807",
          "INSERT INTO old_price (ingredient_id, measure, size, price_minor, currency, priced_on, shop)"
          " SELECT id, 'mass', 1.0, 9223372036854775807, 'GBP', '2026-01-01', '' FROM ingredient"}) {
        CAPTURE(sql);
        const TemporaryFolder folder;
        const auto path = folder / "shed.db";
        fill_values(path);
        type_sql(path, sql);
        Store store = Store::open(path);
        store.change([&] { store.put_price("brown crumb", right_price()); });
        CHECK(store.find_ingredient("brown crumb")->packs.size() == 1);
        CHECK_NOTHROW(store.old_prices("brown crumb"));
    }
}

TEST_CASE("names that would not pass today are mended as they are read, and found by what is shown") {
    const TemporaryFolder folder;
    const auto path = folder / "shed.db";
    fill_values(path);
    type_sql(path,
             "UPDATE pack SET shop = 'ev' || char(27) || '[31mil' || char(10);"
             "INSERT INTO shop (name, folded) VALUES ('a.toml', 'a.toml');"
             "UPDATE ingredient SET name = 'brown' || char(10) || 'crumb', folded = 'brown crumb'");
    const Store store = Store::open(path);
    const std::vector<std::string> names = store.ingredient_names();
    REQUIRE(names == std::vector<std::string>{"brown\\u000acrumb"});
    const auto found = store.find_ingredient(names.front());
    REQUIRE(found);
    CHECK(found->name == names.front());
    CHECK(refused_as_name(found->packs.front().shop) == "");
    for (const std::string& shop : store.shops()) CHECK(refused_as_name(shop) == "");
}

TEST_CASE("a change is in the file itself as soon as it is made, for who copies it") {
    const TemporaryFolder folder;
    const auto path = folder / "shed.db", copy = folder / "copy.db";
    Store store = Store::open(path);
    store.change([&] { store.put(crumb(), EntryOwner::person); });
    std::filesystem::copy_file(path, copy);  // while the store is open, as after a kill
    CHECK(Store::open(copy).find_ingredient("brown crumb"));
}

TEST_CASE("an upgrade is stopped by no file in its copy's place, and what cannot be replaced is named") {
    const TemporaryFolder folder;
    const auto path = folder / "shed.db", copy = path.parent_path() / copy_name();
    {
        SQLite::Database old(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        migrate(old, {migrations()[0], migrations()[1]});
    }
    write_bytes(copy, "no store at all");
    CHECK_NOTHROW(Store::open(path));
    CHECK(whole_file(copy).substr(0, 15) == "SQLite format 3");
}

TEST_CASE("a folder in the place of the copy before an upgrade is named, and the store is left as it is") {
    const TemporaryFolder folder;
    const auto path = folder / "shed.db", copy = path.parent_path() / copy_name();
    {
        SQLite::Database old(path.string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        migrate(old, {migrations()[0], migrations()[1]});
    }
    std::filesystem::create_directory(copy);
    write_bytes(copy / "mine", "mine");
    const std::string before = whole_file(path);
    const Fault fault = fault_of([&] { Store::open(path); });
    CHECK(fault.code == "cannot-copy-store");
    CHECK(fault.message.find(copy_name()) != std::string::npos);
    CHECK(whole_file(path) == before);
    CHECK_FALSE(std::filesystem::exists(copy.string() + ".new"));
}
