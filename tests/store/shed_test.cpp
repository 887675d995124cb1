#include "store/shed.h"

#include <SQLiteCpp/Database.h>

#include <catch2/catch.hpp>

#include "quantities/fault.h"
#include "quantities/units.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

Date on(const char* text) {
    return parse_date(text);
}

Milligrams grams(std::int64_t count) {
    return {count * 1000};
}

/// A shed in a store of its own, with the entries that tests make again and again.
class Bench {
public:
    StockReceipt buy(const char* name, std::int64_t mass, const char* day, std::optional<Date> best = {},
                     StockState state = StockState::dry) {
        Arrival arrival{name, StockKind::ingredient, {}};
        arrival.lot.state = state;
        arrival.lot.got_on = on(day);
        arrival.lot.best_before = best;
        arrival.lot.left = grams(mass);
        return change([&](Shed& shed) { return shed.add(Happening::bought, arrival); });
    }
    StockReceipt use(const char* name, std::int64_t mass, const char* day, std::optional<StockState> state = {}) {
        return change([&](Shed& shed) { return shed.take(Happening::used, {name, grams(mass)}, {on(day), state}); });
    }
    StockReceipt count(const char* name, std::int64_t mass, const char* day, std::optional<Date> best = {}) {
        return change([&](Shed& shed) {
            return shed.count({name, StockKind::ingredient, grams(mass), best}, {on(day), {}});
        });
    }
    StockReceipt book(const std::vector<StockNeed>& needs, const char* day) {
        return change([&](Shed& shed) { return shed.book(needs, "silt bed", on(day)); });
    }
    StockReceipt undo(std::optional<std::int64_t> entry = {}) {
        return change([&](Shed& shed) { return shed.undo(entry, on("2026-06-01")); });
    }
    std::vector<std::int64_t> left(const char* name) {
        std::vector<std::int64_t> masses;
        const auto item = store_.shed().find(name);
        for (const Lot& lot : item->lots) masses.push_back(lot.left.count / 1000);
        return masses;
    }
    Shed shed() { return store_.shed(); }
    [[nodiscard]] std::filesystem::path path() const { return folder_ / "library.db"; }

private:
    template <class Work>
    StockReceipt change(Work&& work) {
        StockReceipt receipt;
        store_.change([&] {
            Shed shed = store_.shed();
            receipt = work(shed);
        });
        return receipt;
    }

    TemporaryFolder folder_;
    Store store_ = Store::open(folder_ / "library.db");
};

template <class Work>
std::vector<Fault> faults_of(Work&& work) {
    try {
        work();
    } catch (const Error& error) {
        return error.faults();
    }
    return {};
}

template <class Work>
std::string code_of(Work&& work) {
    const std::vector<Fault> faults = faults_of(work);
    return faults.empty() ? "" : faults.front().code;
}

using Masses = std::vector<std::int64_t>;

}  // namespace

TEST_CASE("a lot that is bought is found again as it was") {
    Bench bench;
    Arrival arrival{"brown crumb", StockKind::ingredient, {}};
    arrival.lot = {0, StockState::cold, on("2026-01-02"),     on("2026-10-01"), {},
                   0, grams(1000),      parse_money("£2.10"), "the mill"};
    bench.buy("Maize Meal", 500, "2026-01-01");
    const StockReceipt receipt = [&] {
        Store store = Store::open(bench.path());
        StockReceipt made;
        store.change([&] { made = store.shed().add(Happening::bought, arrival); });
        return made;
    }();
    CHECK(receipt.entry == 2);
    const auto item = bench.shed().find("BROWN  crumb");
    REQUIRE(item);
    CHECK(item->name == "brown crumb");
    CHECK(item->left == grams(1000));
    const Lot& lot = item->lots.at(0);
    CHECK(lot.state == StockState::cold);
    CHECK(date_text(lot.got_on) == "2026-01-02");
    CHECK(date_text(lot.best_before.value()) == "2026-10-01");
    CHECK_FALSE(lot.opened_on);
    CHECK(money_text(lot.paid.value()) == "£2.10");
    CHECK(lot.shop == "the mill");
    CHECK(bench.shed().names() == std::vector<std::string>{"brown crumb", "Maize Meal"});
    CHECK(bench.shed().left_of("maize meal") == grams(500));
    CHECK(bench.shed().left_of("moon dust") == Milligrams{});
    CHECK_FALSE(bench.shed().find("moon dust"));
}

TEST_CASE("items stand in the order in which a lot of theirs is to be used, lots likewise") {
    Bench bench;
    bench.buy("a", 100, "2026-01-01");
    bench.buy("b", 100, "2026-01-01", on("2026-05-01"));
    bench.buy("a", 100, "2026-01-01", on("2026-04-01"));
    bench.buy("c", 100, "2026-01-01", on("2026-04-15"));
    std::string order;
    for (const StockItem& item : bench.shed().items(10)) order += item.name;
    CHECK(order == "acb");
    CHECK(bench.shed().items(2).size() == 2);
    CHECK(bench.shed().item_count() == 3);
    CHECK(bench.shed().find("a")->lots.front().id == 3);
}

TEST_CASE("use empties lots in turn, opens them, and what is empty is no longer there") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01", on("2026-10-01"));
    bench.buy("brown crumb", 500, "2026-02-01", on("2026-08-01"));
    const StockReceipt receipt = bench.use("brown crumb", 700, "2026-03-01");
    CHECK(receipt.lines.size() == 2);
    CHECK(receipt.lines.at(1).left == grams(800));
    CHECK(bench.left("brown crumb") == Masses{800});
    CHECK(bench.shed().find("brown crumb")->lots.front().opened_on == on("2026-03-01"));
    bench.use("brown crumb", 800, "2026-03-02");
    CHECK(bench.shed().find("brown crumb")->lots.empty());
    CHECK(bench.shed().items(10).empty());
}

TEST_CASE("more than is there is refused and nothing is taken") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01");
    CHECK(code_of([&] { bench.use("brown crumb", 1001, "2026-03-01"); }) == "short-of-stock");
    CHECK(code_of([&] { bench.use("brown crumb", 1, "2025-12-31"); }) == "short-of-stock");  // not yet bought
    CHECK(code_of([&] { bench.use("brown crumb", 1, "2026-03-01", StockState::frozen); }) == "short-of-stock");
    CHECK(code_of([&] { bench.use("moon dust", 1, "2026-03-01"); }) == "short-of-stock");
    CHECK(bench.left("brown crumb") == Masses{1000});
    CHECK(bench.shed().history("brown crumb").size() == 1);
}

TEST_CASE("a session is booked out whole, or not at all with everything that is short") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01");
    bench.buy("maize meal", 100, "2026-01-01");
    const std::vector<Fault> faults = faults_of([&] {
        bench.book({{"maize meal", grams(101)}, {"brown crumb", grams(10)}, {"molasses", grams(5)}}, "2026-03-01");
    });
    REQUIRE(faults.size() == 2);
    CHECK_THAT(faults[0].message, Catch::Contains("only 100 g") && Catch::Contains("maize meal"));
    CHECK_THAT(faults[1].message, Catch::Contains("none") && Catch::Contains("molasses"));
    CHECK(bench.left("brown crumb") == Masses{1000});
    const StockReceipt receipt =
        bench.book({{"maize meal", grams(60)}, {"brown crumb", grams(10)}, {"Maize Meal", grams(40)}}, "2026-03-01");
    CHECK(receipt.lines.size() == 2);
    CHECK(bench.left("maize meal").empty());
    bench.undo();
    CHECK(bench.left("maize meal") == Masses{100});
    CHECK(bench.left("brown crumb") == Masses{1000});
}

TEST_CASE("a count is an entry, also where it finds what the ledger says") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01");
    CHECK(bench.count("brown crumb", 1000, "2026-03-01").entry == 2);
    CHECK(bench.count("brown crumb", 950, "2026-03-02").lines.front().by == -grams(50));
    CHECK(bench.count("brown crumb", 970, "2026-03-03").lines.front().by == grams(20));
    CHECK(bench.left("brown crumb") == Masses{970});
    CHECK(bench.count("brown crumb", 1170, "2026-03-04", on("2027-01-01")).lines.front().lot.id == 2);
    CHECK(bench.left("brown crumb") == Masses{200, 970});
    CHECK(code_of([&] { bench.count("brown crumb", 1170, "2026-03-04", on("2027-01-01")); }) == "no-surplus");
    CHECK(bench.shed().history("brown crumb").size() == 5);
}

TEST_CASE("what the shed never held is counted into a new lot, and none of it is no entry") {
    Bench bench;
    CHECK(bench.count("moon dust", 0, "2026-03-01").entry == 0);
    CHECK_FALSE(bench.shed().find("moon dust"));
    bench.count("brown crumb", 300, "2026-03-01");
    CHECK(bench.left("brown crumb") == Masses{300});
    bench.count("brown crumb", 0, "2026-03-01");
    CHECK(bench.left("brown crumb").empty());
    bench.count("brown crumb", 0, "2026-03-01");
    CHECK(bench.shed().history("brown crumb").size() == 3);
}

TEST_CASE("a count closes the days before it, and may not come before what happened") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01");
    bench.use("brown crumb", 100, "2026-03-05");
    CHECK(code_of([&] { bench.count("brown crumb", 950, "2026-03-04"); }) == "before-entry");
    bench.count("brown crumb", 850, "2026-03-05");
    CHECK(code_of([&] { bench.use("brown crumb", 1, "2026-03-04"); }) == "before-count");
    CHECK(code_of([&] { bench.buy("brown crumb", 1, "2026-03-04"); }) == "before-count");
    CHECK(code_of([&] { bench.book({{"brown crumb", grams(1)}}, "2026-03-04"); }) == "before-count");
    bench.use("brown crumb", 50, "2026-03-05");
    CHECK(bench.left("brown crumb") == Masses{800});
}

TEST_CASE("undo takes back the last entry that stands, then the one before") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01");
    bench.use("brown crumb", 100, "2026-03-01");
    bench.use("brown crumb", 200, "2026-03-02");
    const StockReceipt first = bench.undo();
    CHECK(first.undoes == 3);
    CHECK(bench.left("brown crumb") == Masses{900});
    CHECK(bench.undo().undoes == 2);
    CHECK_FALSE(bench.shed().find("brown crumb")->lots.front().opened_on);
    CHECK(bench.undo().undoes == 1);
    CHECK(bench.left("brown crumb").empty());
    CHECK(code_of([&] { bench.undo(); }) == "nothing-to-undo");
    const std::vector<StockEntry> history = bench.shed().history("brown crumb");
    REQUIRE(history.size() == 6);  // nothing is erased
    CHECK(history[0].undone_by == 6);
    CHECK(history[5].undoes == 1);
}

TEST_CASE("what cannot be taken back says why") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01");
    bench.use("brown crumb", 100, "2026-03-01");
    CHECK(code_of([&] { bench.undo(1); }) == "cannot-undo");  // used since
    CHECK(code_of([&] { bench.undo(17); }) == "unknown-entry");
    bench.undo(2);
    CHECK(code_of([&] { bench.undo(2); }) == "cannot-undo");  // undone already
    CHECK(code_of([&] { bench.undo(3); }) == "cannot-undo");  // itself an undoing
    bench.count("brown crumb", 900, "2026-03-01");
    CHECK(code_of([&] { bench.undo(1); }) == "cannot-undo");  // counted since
    bench.undo(4);
    bench.undo(1);
    CHECK(bench.left("brown crumb").empty());
}

TEST_CASE("an ingredient and a made-up mix of one name are kept apart by refusing the second") {
    Bench bench;
    bench.buy("silt bed", 100, "2026-01-01");
    Arrival mix{"Silt Bed", StockKind::mix, {}};
    mix.lot.got_on = on("2026-01-01");
    mix.lot.left = grams(1);
    Store store = Store::open(bench.path());
    CHECK(code_of([&] { store.change([&] { store.shed().add(Happening::kept, mix); }); }) == "other-kind");
}

TEST_CASE("the database itself refuses to change or erase what happened, and a balance below zero") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01");
    SQLite::Database database(bench.path().string(), SQLite::OPEN_READWRITE);
    for (const char* sql :
         {"DELETE FROM stock_movement", "DELETE FROM stock_entry", "UPDATE stock_movement SET milligrams = 1",
          "UPDATE stock_entry SET happened_on = '2026-02-01'", "UPDATE stock_lot SET left_mg = -1",
          "UPDATE stock_lot SET over_mg = -1", "UPDATE stock_item SET over_mg = -1"}) {
        CAPTURE(sql);
        CHECK_THROWS_AS(database.exec(sql), SQLite::Exception);
    }
    CHECK(bench.left("brown crumb") == Masses{1000});
}

TEST_CASE("what two stores used of one bag beyond what was in it is kept beside it, until it is counted") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01");
    {
        SQLite::Database database(bench.path().string(), SQLite::OPEN_READWRITE);
        const auto whole = [&](const char* sql) { return database.execAndGet(sql).getInt(); };
        database.exec(
            "INSERT INTO stock_entry VALUES (2, 'used', '2026-01-01', 1, '', NULL, 'a mark');"
            "INSERT INTO stock_movement VALUES (2, 1, -1000300)");
        for (const char* table : {"stock_lot", "stock_item"}) {
            CHECK(whole(("SELECT left_mg FROM " + std::string(table)).c_str()) == 0);
            CHECK(whole(("SELECT over_mg FROM " + std::string(table)).c_str()) == 300);
        }
    }
    CHECK(bench.left("brown crumb") == Masses{});
    Store store = Store::open(bench.path());
    store.change([&] {
        store.shed().count({"brown crumb", StockKind::ingredient, grams(250), {}}, {on("2026-01-02"), {}});
    });
    CHECK(store.shed().left_of("brown crumb") == grams(250));
    CHECK(store.merging().overdrawn().empty());
}

TEST_CASE("the marks that phones gave come newest first, and no others") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    store.change([&] {
        Shed shed = store.shed();
        for (const char* mark : {"mhz3k0v2001a7c4", "mhz3k4dq0027e01", "2026-11-22 used brown crumb 600 g   #1"})
            shed.note_mark(mark, 0);
    });
    CHECK(store.shed().newest_marks(10) == std::vector<std::string>{"mhz3k4dq0027e01", "mhz3k0v2001a7c4"});
    CHECK(store.shed().newest_marks(1) == std::vector<std::string>{"mhz3k4dq0027e01"});
}

TEST_CASE("writing in the shed outside of a change is the caller's mistake") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK_THROWS_AS(store.shed().undo({}, on("2026-01-01")), std::logic_error);
    CHECK_THROWS_AS(store.shed().book({}, "", on("2026-01-01")), std::logic_error);
}

TEST_CASE("words and dates that the program never wrote are damage, and said to be") {
    Bench bench;
    bench.buy("brown crumb", 1000, "2026-01-01");
    SQLite::Database database(bench.path().string(), SQLite::OPEN_READWRITE);
    for (const char* sql :
         {"UPDATE stock_lot SET state = 'damp'", "UPDATE stock_lot SET state = 'dry', got_on = 'yesterday'",
          "UPDATE stock_lot SET got_on = '2026-01-01', paid_minor = 1, currency = 'GPB'",
          "UPDATE stock_item SET kind = 'thing'"}) {
        CAPTURE(sql);
        database.exec(sql);
        CHECK(code_of([&] { static_cast<void>(bench.shed().find("brown crumb")); }) == "damaged-store");
    }
}
