#include <SQLiteCpp/Database.h>

#include <catch2/catch.hpp>
#include <chrono>
#include <csignal>
#include <limits>
#include <random>
#include <stdexcept>
#include <thread>

#include "bait/feel.h"
#include "quantities/fault.h"
#include "store/child_process.h"
#include "store/kept_changes.h"
#include "store/random_entries.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;
using namespace std::chrono_literals;

namespace {

// One change that touches several tables: they must all tell the same number afterwards.
void put_numbered(Store& store, int number) {
    const std::string text = std::to_string(number);
    store.change([&] {
        Ingredient ingredient = ingredient_named("coarse meal");
        ingredient.note = text;
        ingredient.cautions.assign(50, text);
        store.put(ingredient, EntryOwner::person);
        store.put(Recipe{"river mix", {}, {}, {}, {}, text, {{text, Share{1}}}, {}}, EntryOwner::person);
        store.put(recipe_named(text), EntryOwner::person);
        store.set_shipped_digest(text);
    });
}

void check_whole(const std::filesystem::path& path) {
    const Store store = Store::open(path);
    const std::string number = store.shipped_digest();
    REQUIRE_FALSE(number.empty());
    CHECK(store.find_ingredient("coarse meal")->note == number);
    CHECK(store.find_ingredient("coarse meal")->cautions == std::vector<std::string>(50, number));
    CHECK(store.find_recipe("river mix")->note == number);
    CHECK(store.find_recipe("river mix")->parts.front().of == number);
    CHECK(store.recipe_names().size() == std::stoul(number) + 2);
    SQLite::Database database(path.string());
    CHECK(database.execAndGet("PRAGMA integrity_check").getString() == "ok");
}

FaultClass fault_of_change(Store& store, const std::function<void()>& work) {
    try {
        store.change(work);
    } catch (const StorageError& error) {
        return error.fault_class();
    }
    return FaultClass::answer_is_no;
}

}  // namespace

TEST_CASE("a change that throws leaves nothing behind") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    put_numbered(store, 0);
    CHECK_THROWS_AS(store.change([&] {
        store.put(ingredient_named("fine meal"), EntryOwner::person);
        store.put(Recipe{"river mix", {}, {}, {}, {}, "other", {}, {}}, EntryOwner::person);
        store.put(Feel{"firm", 1.2, 1.3, {}}, EntryOwner::person);
        store.retire({"mix", "river mix", "2026-03-01", {}});
        store.set_shipped_digest("other");
        throw std::out_of_range("of the caller");
    }),
                    std::out_of_range);
    CHECK_FALSE(store.find_ingredient("fine meal"));
    CHECK(store.feels().empty());
    CHECK(store.retired("mix", "river mix").empty());
    check_whole(folder / "library.db");
}

TEST_CASE("a change sees what it has put") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    store.change([&] {
        store.put(ingredient_named("coarse meal"), EntryOwner::person);
        CHECK(store.find_ingredient("coarse meal"));
    });
}

TEST_CASE("a number that is none is refused, and the change with it") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK(fault_of_change(store, [&] {
              store.put(ingredient_named("coarse meal"), EntryOwner::person);
              store.put(Feel{"firm", std::numeric_limits<double>::quiet_NaN(), 1.3, {}}, EntryOwner::person);
          }) == FaultClass::input_output);
    CHECK_FALSE(store.find_ingredient("coarse meal"));
}

TEST_CASE("putting outside of a change is the caller's mistake") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK_THROWS_AS(store.put(ingredient_named("coarse meal"), EntryOwner::person), std::logic_error);
    CHECK_THROWS_AS(store.change([&] { store.change([] {}); }), std::logic_error);
    EntryRegister entries = store.entries();
    CHECK_THROWS_AS(entries.put_written(EntryKind::venue, {"pit", "text"}, EntryOwner::person), std::logic_error);
    CHECK_THROWS_AS(entries.follow_in_text(EntryKind::venue, {"pit", "text"}), std::logic_error);
    CHECK_THROWS_AS(entries.remove(EntryKind::ingredient, "coarse meal"), std::logic_error);
    CHECK_THROWS_AS(entries.rename(EntryKind::ingredient, "coarse meal", "fine meal"), std::logic_error);
    CHECK_THROWS_AS(entries.take_prices_back("coarse meal"), std::logic_error);
}

TEST_CASE("a store that was moved goes on") {
    const TemporaryFolder folder;
    Store opened = Store::open(folder / "library.db");
    Store store = std::move(opened);
    put_numbered(store, 0);
    check_whole(folder / "library.db");
}

TEST_CASE("a change is whole or absent when the process is killed in the middle of it") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    {
        Store store = Store::open(path);
        put_numbered(store, 0);
    }
    std::mt19937 random(20260301);
    for (int kill = 0; kill < 50; ++kill) {
        const pid_t child = start_child([&] {
            Store store = Store::open(path);
            for (int number = std::stoi(store.shipped_digest()) + 1;; ++number) put_numbered(store, number);
        });
        // The last ten are given time to get somewhere on a slow or busy machine.
        std::this_thread::sleep_for(std::chrono::microseconds(random() % (kill < 40 ? 30000U : 400000U)));
        ::kill(child, SIGKILL);
        CHECK(end_of(child) == -1);
        check_whole(path);
    }
    CHECK(Store::open(path).shipped_digest() != "0");
}

TEST_CASE("a new store is whole or absent when the process that makes it is killed") {
    std::mt19937 random(20260302);
    for (int kill = 0; kill < 30; ++kill) {
        const TemporaryFolder folder;
        const std::filesystem::path path = folder / "library.db";
        const pid_t child = start_child([&] {
            Store store = Store::open(path);
            for (;;) std::this_thread::sleep_for(1s);
        });
        std::this_thread::sleep_for(std::chrono::microseconds(random() % 20000U));
        ::kill(child, SIGKILL);
        end_of(child);
        Store store = Store::open(path);
        put_numbered(store, 0);
        check_whole(path);
    }
}

TEST_CASE("two processes that write at once both succeed") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    const auto write_twenty = [&](const std::string& letter) {
        return start_child([&path, letter] {
            Store store = Store::open(path);  // which both make at once, too
            for (int number = 0; number < 20; ++number)
                store.change([&] { store.put(ingredient_named(letter + std::to_string(number)), EntryOwner::person); });
        });
    };
    const pid_t first = write_twenty("a"), second = write_twenty("b");
    CHECK(end_of(first) == 0);
    CHECK(end_of(second) == 0);
    CHECK(Store::open(path).ingredient_names().size() == 40);
    CHECK(std::distance(std::filesystem::directory_iterator(folder.path()), {}) == 1);
}

TEST_CASE("a store locked for longer than the patience says to try again, and reads meanwhile") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db", 150ms);
    put_numbered(store, 0);
    SQLite::Database other((folder / "library.db").string(), SQLite::OPEN_READWRITE);
    other.exec("BEGIN IMMEDIATE");
    const auto start = std::chrono::steady_clock::now();
    CHECK(fault_of_change(store, [] {}) == FaultClass::try_again);
    CHECK(std::chrono::steady_clock::now() - start >= 100ms);
    CHECK(store.find_ingredient("coarse meal"));
    other.exec("ROLLBACK");
    put_numbered(store, 1);
    check_whole(folder / "library.db");
}

TEST_CASE("a store locked for shorter than the patience waits") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    SQLite::Database other((folder / "library.db").string(), SQLite::OPEN_READWRITE);
    other.exec("BEGIN IMMEDIATE");
    std::thread release([&] {
        std::this_thread::sleep_for(100ms);
        other.exec("ROLLBACK");
    });
    CHECK_NOTHROW(put_numbered(store, 0));
    release.join();
}

TEST_CASE("changes that are to be undone are seen while the store is open, and then are not there") {
    const TemporaryFolder folder;
    {
        Store store = Store::open(folder / "library.db");
        put_numbered(store, 0);
    }
    make_changes(Changes::undone);
    {
        Store store = Store::open(folder / "library.db");
        put_numbered(store, 1);
        CHECK(store.shipped_digest() == "1");
        store.look([&] { CHECK(store.find_ingredient("coarse meal")->note == "1"); });
        put_numbered(store, 2);
        CHECK(store.find_recipe("river mix")->note == "2");
    }
    make_changes(Changes::kept);
    check_whole(folder / "library.db");
    CHECK(Store::open(folder / "library.db").shipped_digest() == "0");
}
