#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <map>

#include "quantities/fault.h"
#include "quantities/fault_of.h"
#include "quantities/units.h"
#include "store/random_entries.h"
#include "store/random_log.h"
#include "store/store.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

const Date log_day = parse_date("2026-03-01");

std::int64_t add_to_log(Store& store, const LoggedThing& what, std::int64_t session = 0, Date on = log_day) {
    std::int64_t id = 0;
    store.change([&] { id = store.log().add({0, on, session, what}); });
    return id;
}

std::vector<LogEntry> undo_in_log(Store& store, std::optional<std::int64_t> id = {}) {
    std::vector<LogEntry> taken;
    store.change([&] { taken = store.log().undo(id, log_day); });
    return taken;
}

std::vector<std::int64_t> numbers_of(const std::vector<LogEntry>& entries) {
    std::vector<std::int64_t> numbers;
    numbers.reserve(entries.size());
    for (const LogEntry& entry : entries) numbers.push_back(entry.id);
    return numbers;
}

LoggedSession morning() {
    LoggedSession session{"open carpet"};
    session.start = "09:30";
    session.length = 5.0 * hour;
    session.venue = "the old pit";
    return session;
}

using Numbers = std::vector<std::int64_t>;

}  // namespace

TEST_CASE("an entry of every kind comes back with every field to the bit, alone and among all") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    std::map<std::int64_t, std::string> kept;
    CHECK(rc::check("log entry", [&] {
        LogEntry entry = any_log_entry();
        std::int64_t id = 0;
        store.change([&] { id = store.log().add(entry); });
        RC_ASSERT(id > (kept.empty() ? 0 : kept.rbegin()->first));
        kept[id] = written_out(entry);
        const auto found = store.log().find(id);
        RC_ASSERT(found.has_value());
        RC_ASSERT(found->id == id);
        RC_ASSERT(written_out(*found) == kept[id]);
    }));
    const Store again = Store::open(folder / "library.db");
    const std::vector<LogEntry> all = again.log().all_entries(), standing = again.log().entries();
    REQUIRE(all.size() == kept.size());
    REQUIRE(standing.size() == kept.size());
    CHECK(again.log().size() == kept.size());
    for (const LogEntry& entry : all) CHECK(written_out(entry) == kept[entry.id]);
    CHECK(std::is_sorted(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.id < b.id; }));
    CHECK(std::is_sorted(standing.begin(), standing.end(), [](const LogEntry& a, const LogEntry& b) {
        return a.on < b.on || (a.on == b.on && a.id < b.id);
    }));
}

TEST_CASE("an entry that is not there is not found") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK_FALSE(store.log().find(1));
    CHECK(store.log().entries().empty());
    CHECK(store.log().size() == 0);
    CHECK(fault_of([&] { undo_in_log(store); }).code == "nothing-to-undo");
    CHECK(fault_of([&] { undo_in_log(store, 7); }).code == "unknown-entry");
    CHECK(fault_of([&] { store.change([&] { store.log().believe(7, true); }); }).code == "unknown-entry");
}

TEST_CASE("the last entry that stands is undone where none is named, and one undoing after the other goes back") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    const std::int64_t first = add_to_log(store, LoggedBag{"brown crumb"});
    const std::int64_t second = add_to_log(store, LoggedBag{"maize meal"});
    CHECK(numbers_of(undo_in_log(store)) == Numbers{second});
    CHECK(numbers_of(store.log().entries()) == Numbers{first});
    const auto undone = store.log().find(second);
    REQUIRE(undone);
    const auto undoing = store.log().find(undone->undone_by);
    REQUIRE(undoing);
    CHECK(std::get<LogUndone>(undoing->what).entry == second);
    CHECK(numbers_of(undo_in_log(store)) == Numbers{first});
    CHECK(store.log().size() == 0);
    CHECK(store.log().all_entries().size() == 4);
    CHECK(fault_of([&] { undo_in_log(store); }).code == "nothing-to-undo");
}

TEST_CASE("what is undone already, and an undoing, cannot be undone, and nothing is written") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    const std::int64_t entry = add_to_log(store, LoggedBag{"brown crumb"});
    undo_in_log(store, entry);
    for (const std::int64_t id : {entry, entry + 1}) {
        const Fault fault = fault_of([&] { undo_in_log(store, id); });
        CHECK(fault.code == "cannot-undo");
        CHECK_FALSE(fault.hint.empty());
    }
    CHECK(fault_of([&] { add_to_log(store, LogUndone{entry}); }).code == "cannot-undo");
    CHECK(store.log().all_entries().size() == 2);
}

TEST_CASE("with a session goes all that belongs to it and still stands, and nothing else") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    const std::int64_t other = add_to_log(store, morning());
    const std::int64_t session = add_to_log(store, morning());
    const std::int64_t put_in = add_to_log(store, LoggedPutIn{5.0 * minute, "silt bed"}, session);
    const std::int64_t slip = add_to_log(store, LoggedCatch{{}, "bream", 100, {}}, session);
    const std::int64_t caught = add_to_log(store, LoggedCatch{{}, "bream", 10, {}}, session);
    const std::int64_t elsewhere = add_to_log(store, LoggedCatch{{}, "roach", 3, {}}, other);
    undo_in_log(store, slip);
    const auto taken = undo_in_log(store, session);
    CHECK(numbers_of(taken) == Numbers{session, put_in, caught});
    for (const LogEntry& entry : taken) CHECK(entry.undone_by != 0);
    CHECK(numbers_of(store.log().entries()) == Numbers{other, elsewhere});
    CHECK(fault_of([&] { add_to_log(store, LoggedCatch{}, session); }).code == "unknown-session");
    CHECK(fault_of([&] { add_to_log(store, LoggedCatch{}, caught); }).code == "unknown-session");
    CHECK(fault_of([&] { add_to_log(store, LoggedCatch{}, 99); }).code == "unknown-session");
}

TEST_CASE("an entry can be believed and doubted again, whatever else of it is fixed") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    const std::int64_t entry = add_to_log(store, LoggedBag{"brown crumb"});
    for (const bool believed : {true, false, true}) {
        store.change([&] { store.log().believe(entry, believed); });
        CHECK(store.log().find(entry)->believed == believed);
    }
}

TEST_CASE("notes that were taken are known by their page and day, or by strategy, day and start") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    LoggedSession from_page = morning(), without = morning();
    from_page.page = "open-carpet-1";
    without.strategy = "Margin";
    const std::int64_t first = add_to_log(store, from_page), second = add_to_log(store, without);
    CHECK(store.log().session_from(from_page, log_day) == first);
    CHECK_FALSE(store.log().session_from(from_page, log_day + std::chrono::days(1)));
    from_page.page = "open-carpet-2";
    CHECK_FALSE(store.log().session_from(from_page, log_day));
    without.strategy = "  margin";
    CHECK(store.log().session_from(without, log_day) == second);
    CHECK_FALSE(store.log().session_from(without, log_day + std::chrono::days(1)));
    without.start = "10:00";
    CHECK_FALSE(store.log().session_from(without, log_day));
    undo_in_log(store, first);
    from_page.page = "open-carpet-1";
    CHECK_FALSE(store.log().session_from(from_page, log_day));
}

TEST_CASE("writing outside of a change is the caller's mistake, and a change that throws leaves no entry") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    CHECK_THROWS_AS(store.log().add({0, log_day, 0, LoggedBag{"bran"}}), std::logic_error);
    CHECK_THROWS_AS(store.log().undo({}, log_day), std::logic_error);
    CHECK_THROWS_AS(store.log().believe(1, true), std::logic_error);
    CHECK_THROWS_AS(store.log().put_learnt({}, {}), std::logic_error);
    CHECK_THROWS_AS(store.change([&] {
        store.log().add({0, log_day, 0, morning()});
        throw std::out_of_range("of the caller");
    }),
                    std::out_of_range);
    CHECK(store.log().all_entries().empty());
}

TEST_CASE("a number that no log has is refused when it is written, whatever the kind") {
    const TemporaryFolder folder;
    Store store = Store::open(folder / "library.db");
    const double none = std::numeric_limits<double>::quiet_NaN();
    LoggedMix mix{"silt bed", "firm"};
    mix.water = Mass::from_si(none);
    LoggedSession session = morning();
    session.anglers = 0;
    for (const LoggedThing& what :
         {LoggedThing(mix), LoggedThing(session), LoggedThing(LoggedUse{"bran", Mass::from_si(-1)}),
          LoggedThing(LoggedSoak{"pellet", 1.0 * gram, 1.0 * gram, Time::from_si(1e300)}),
          LoggedThing(LoggedCatch{{}, "", -1, {}})}) {
        const Fault fault = fault_of([&] { add_to_log(store, what); });
        CHECK(fault.code == "logged-out-of-range");
        CHECK_FALSE(fault.hint.empty());
    }
    CHECK(store.log().all_entries().empty());
}
