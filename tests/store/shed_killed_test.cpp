#include <SQLiteCpp/Database.h>
#include <unistd.h>

#include <array>
#include <catch2/catch.hpp>
#include <chrono>
#include <csignal>
#include <random>
#include <thread>

#include "quantities/fault.h"
#include "store/child_process.h"
#include "store/shed.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;
using namespace std::chrono_literals;

namespace {

const Date that_day = parse_date("2026-03-01");
constexpr std::int64_t bought = 1'000'000'000;

// Each session takes so many milligrams of each, out of two lots of the first.
const std::vector<StockNeed> session{{"brown crumb", {7}}, {"maize meal", {3}}, {"molasses", {1}}};

void fill(const std::filesystem::path& path, std::int64_t mass) {
    Store store = Store::open(path);
    store.change([&] {
        for (const StockNeed& need : session) {
            Arrival arrival{need.name, StockKind::ingredient, {}};
            arrival.lot.got_on = that_day;
            arrival.lot.left = {mass};
            store.shed().add(Happening::bought, arrival);
        }
    });
}

void book_one(Store& store) {
    store.change([&] { store.shed().book(session, "silt bed", that_day); });
}

std::int64_t number(const std::filesystem::path& path, const std::string& sql) {
    SQLite::Database database(path.string());
    return database.execAndGet(sql).getInt64();
}

// Every booking or undoing has all its movements, the balances are the sums of the movements, and the three names tell
// the same number of sessions.
void check_shed_whole(const std::filesystem::path& path) {
    SQLite::Database database(path.string());
    CHECK(database.execAndGet("PRAGMA integrity_check").getString() == "ok");
    CHECK(number(path, "SELECT count(*) FROM pragma_foreign_key_check") == 0);
    CHECK(number(path,
                 "SELECT count(*) FROM stock_entry e WHERE what <> 'bought' AND"
                 " (SELECT count(*) FROM stock_movement WHERE entry_id = e.id) <> 3") == 0);
    CHECK(number(path,
                 "SELECT count(*) FROM stock_lot l WHERE left_mg <>"
                 " (SELECT sum(milligrams) FROM stock_movement WHERE lot_id = l.id)") == 0);
    const std::int64_t sessions = number(path, "SELECT count(*) FROM stock_entry WHERE what = 'booked'") -
                                  number(path, "SELECT count(*) FROM stock_entry WHERE what = 'undone'");
    Store store = Store::open(path);
    for (const StockNeed& need : session)
        CHECK(store.shed().left_of(need.name).count == bought - sessions * need.mass.count);
}

}  // namespace

TEST_CASE("each booking is whole or absent when the process is killed, 200 times") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    fill(path, bought);
    std::mt19937 random(20260303);
    // On a busy machine some are killed before their first booking: then a few more are.
    const auto entries = [&path] { return number(path, "SELECT count(*) FROM stock_entry"); };
    for (int kill = 0; kill < 200 || (kill < 1000 && entries() <= 200); ++kill) {
        std::array<int, 2> ready{};  // so that the kill falls among the bookings, not before them
        REQUIRE(::pipe(ready.data()) == 0);
        const pid_t child = start_child([&] {
            Store store = Store::open(path);
            if (::write(ready[1], "x", 1) != 1) return;
            for (int i = 0;; ++i) {
                book_one(store);
                if (i % 3 == 2) store.change([&] { store.shed().undo({}, that_day); });
            }
        });
        char opened = 0;
        CHECK(::read(ready[0], &opened, 1) == 1);
        std::this_thread::sleep_for(std::chrono::microseconds(random() % 30000U));
        ::kill(child, SIGKILL);
        for (const int end : ready) ::close(end);
        CHECK(end_of(child) == -1);
        check_shed_whole(path);
    }
    CHECK(entries() > 200);
}

TEST_CASE("two processes that book at once take everything once and nothing twice") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    fill(path, 7 * 41);  // of the first, 41 sessions' worth: one process gets the last
    const auto book_until_short = [&path] {
        return start_child([&path] {
            Store store = Store::open(path);
            try {
                for (;;) book_one(store);
            } catch (const Error& error) {
                if (error.faults().front().code != "short-of-stock") throw;
            }
        });
    };
    const pid_t first = book_until_short(), second = book_until_short();
    CHECK(end_of(first) == 0);
    CHECK(end_of(second) == 0);
    Store store = Store::open(path);
    CHECK(store.shed().left_of("brown crumb") == Milligrams{});
    CHECK(store.shed().left_of("maize meal") == Milligrams{7 * 41 - 3 * 41});
    CHECK(store.shed().history("brown crumb").size() == 42);
}

TEST_CASE("a booking while another program holds the store says to try again, and books nothing") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    fill(path, bought);
    Store store = Store::open(path, 100ms);
    SQLite::Database other(path.string(), SQLite::OPEN_READWRITE);
    other.exec("BEGIN IMMEDIATE");
    try {
        book_one(store);
        FAIL("it was booked");
    } catch (const StorageError& error) {
        CHECK(error.fault_class() == FaultClass::try_again);
    }
    other.exec("ROLLBACK");
    check_shed_whole(path);
}
