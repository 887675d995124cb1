#include <SQLiteCpp/Database.h>
#include <unistd.h>

#include <array>
#include <catch2/catch.hpp>
#include <chrono>
#include <csignal>
#include <random>
#include <thread>

#include "quantities/fault.h"
#include "quantities/units.h"
#include "store/child_process.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

const Date killed_day = parse_date("2026-03-01");

/// A session with a mix of three parts and two catches, all in one change; the number of the session.
std::int64_t log_one_session(Store& store, int number) {
    LoggedMix mix{"silt bed", "firm"};
    for (const char* part : {"brown crumb", "maize meal", "bran"}) mix.parts.push_back({part, number * gram});
    LoggedSession session{"open carpet"};
    session.page = "page " + std::to_string(number);
    std::int64_t id = 0;
    store.change([&] {
        id = store.log().add({0, killed_day, 0, session});
        store.log().add({0, killed_day, id, mix});
        for (int i = 0; i < 2; ++i) store.log().add({0, killed_day, id, LoggedCatch{{}, "bream", number, {}}});
    });
    return id;
}

/// Each session has all its entries, or none of them stands; sessions that stand.
std::size_t check_log_whole(const Store& store) {
    std::size_t sessions = 0, mixes = 0, catches = 0;
    for (const LogEntry& entry : store.log().entries()) {
        if (std::holds_alternative<LoggedSession>(entry.what)) ++sessions;
        if (std::holds_alternative<LoggedCatch>(entry.what)) ++catches;
        if (const auto* mix = std::get_if<LoggedMix>(&entry.what)) {
            ++mixes;
            CHECK(mix->parts.size() == 3);
        }
    }
    CHECK(mixes == sessions);
    CHECK(catches == 2 * sessions);
    CHECK(store.log().size() % 4 == 0);  // another reading, which may see later sessions
    return sessions;
}

/// The same while nobody writes.
std::size_t check_quiet_log(const Store& store) {
    const std::size_t sessions = check_log_whole(store);
    CHECK(store.log().size() == 4 * sessions);
    return sessions;
}

}  // namespace

TEST_CASE("a killed process loses no session that it was told is logged, and leaves no half one, 100 times") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    Store::open(path);
    std::mt19937 random(20260301);
    std::size_t told = 0, told_undone = 0;  // by all children, of sessions that are in, and that are taken back
    for (int kill = 0; kill < 100 || (kill < 500 && told < 50); ++kill) {
        std::array<int, 2> said{};
        REQUIRE(::pipe(said.data()) == 0);
        const pid_t child = start_child([&] {
            Store store = Store::open(path);
            if (::write(said[1], "o", 1) != 1) return;
            for (int i = 1;; ++i) {
                const std::int64_t session = log_one_session(store, i);
                if (::write(said[1], "s", 1) != 1) return;
                if (i % 3 != 0) continue;
                store.change([&] { store.log().undo(session, killed_day); });
                if (::write(said[1], "u", 1) != 1) return;
            }
        });
        ::close(said[1]);
        char word = 0;
        CHECK(::read(said[0], &word, 1) == 1);
        const std::size_t before = check_log_whole(Store::open(path));  // of this child, perhaps one already
        std::this_thread::sleep_for(std::chrono::microseconds(random() % 30000U));
        ::kill(child, SIGKILL);
        CHECK(end_of(child) == -1);
        while (::read(said[0], &word, 1) == 1) ++(word == 's' ? told : told_undone);
        ::close(said[0]);
        const Store store = Store::open(path);
        check_quiet_log(store);
        std::size_t written = 0, undone = 0;
        for (const LogEntry& entry : store.log().all_entries()) {
            if (!std::holds_alternative<LoggedSession>(entry.what)) continue;
            ++written;
            if (entry.undone_by != 0) ++undone;
        }
        CHECK(written >= told);
        CHECK(written <= told + static_cast<std::size_t>(kill) + 1);  // one a kill was in, but not told yet
        CHECK(undone >= told_undone);
        CHECK(before <= written);
    }
    CHECK(told >= 50);
    SQLite::Database database(path.string());
    CHECK(database.execAndGet("PRAGMA integrity_check").getString() == "ok");
    CHECK(database.execAndGet("SELECT count(*) FROM pragma_foreign_key_check").getInt() == 0);
}

TEST_CASE("two processes that log at once both get in, and one that learns meanwhile sees whole sessions") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    Store::open(path);
    const auto log_sixty = [&path] {
        return start_child([&path] {
            Store store = Store::open(path);
            for (int i = 1; i <= 60; ++i) log_one_session(store, i);
        });
    };
    const pid_t first = log_sixty(), second = log_sixty();
    const Store store = Store::open(path);
    for (int i = 0; i < 30; ++i) check_log_whole(store);
    CHECK(end_of(first) == 0);
    CHECK(end_of(second) == 0);
    CHECK(check_quiet_log(store) == 120);
}

TEST_CASE("of two processes that undo the same entry one is told that it is undone already") {
    const TemporaryFolder folder;
    const std::filesystem::path path = folder / "library.db";
    Store store = Store::open(path);
    const std::int64_t session = log_one_session(store, 1);
    const auto undo_it = [&] {
        return start_child([&path, session] {
            Store other = Store::open(path);
            other.change([&] { other.log().undo(session, killed_day); });
        });
    };
    const pid_t first = undo_it(), second = undo_it();
    CHECK(end_of(first) + end_of(second) == 1);
    CHECK(store.log().size() == 0);
    CHECK(store.log().all_entries().size() == 8);
}
