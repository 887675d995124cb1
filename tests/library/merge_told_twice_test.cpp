// What was typed into one store, carried to the other as notes, and merged: one session, however it went round.
#include <catch2/catch.hpp>
#include <filesystem>

#include "files/notes_reader.h"
#include "files/notes_text.h"
#include "library/log_notes.h"
#include "library/merge_store.h"
#include "library/open_library.h"
#include "quantities/units.h"
#include "report/merge_report.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

const Date fished = parse_date("2026-06-01"), now = parse_date("2026-11-25");

LogEntry told(LoggedThing what, std::int64_t session = 0) {
    LogEntry entry;
    entry.on = fished;
    entry.session = session;
    entry.what = std::move(what);
    return entry;
}

LoggedMix firm_mix(double water) {
    LoggedMix mix;
    mix.of = "silt bed";
    mix.dry = 1.0 * kilogram;
    mix.water = water * gram;
    mix.feel = "firm";
    return mix;
}

LoggedCatch bream(int count) {
    LoggedCatch fish;
    fish.fish = "bream";
    fish.count = count;
    return fish;
}

class Carried {
public:
    Carried() : home(open_store(folder_ / "home.db")), van(open_store(folder_ / "van.db")) {
        home.change([&] {
            LoggedSession session;
            session.strategy = "tight balls";
            session.length = 5.0 * hour;
            const std::int64_t id = home.log().add(told(session));
            home.log().add(told(firm_mix(700), id));
            home.log().add(told(bream(3), id));
            home.log().add(told(bream(1)));
        });
    }

    void carry_notes() {
        const std::string text = notes_text(home.log().entries());
        take_notes(van, {}, read_notes(text, "notes.toml", now), {}, now);
    }
    MergeAnswer home_takes() { return merge_store(home, folder_ / "van.db", now); }
    MergeAnswer van_takes() { return merge_store(van, folder_ / "home.db", now); }

private:
    TemporaryFolder folder_;

public:
    Store home, van;
};

bool is_known_already(const MergeAnswer& answer) {
    return !answer.anything() && merge_reply(answer).told().text().find("is here already") != std::string::npos;
}

}  // namespace

TEST_CASE("a session that went round by notes is one after a merge, whichever way") {
    for (const bool home_first : {true, false}) {
        Carried stores;
        stores.carry_notes();
        REQUIRE(stores.van.log().size() == 4);
        CHECK(is_known_already(home_first ? stores.home_takes() : stores.van_takes()));
        CHECK(is_known_already(home_first ? stores.van_takes() : stores.home_takes()));
        CHECK(stores.home.log().size() == 4);
        CHECK(stores.van.log().size() == 4);
    }
}

TEST_CASE("what was added to it on the way joins it, and what was taken back stays so") {
    Carried stores;
    stores.carry_notes();
    stores.van.change([&] { stores.van.log().add(told(bream(7), 1)); });
    stores.home.change([&] { stores.home.log().undo(2, now); });  // the mix
    const MergeAnswer answer = stores.home_takes();
    CHECK(answer.log_entries == 1);
    CHECK(answer.sessions == 0);
    CHECK(stores.home.log().size() == 4);
    CHECK(stores.van_takes().log_entries == 1);
    CHECK(stores.van.log().size() == 4);
    const auto is_mix = [](const LogEntry& entry) { return std::holds_alternative<LoggedMix>(entry.what); };
    for (const Store* store : {&stores.home, &stores.van}) {
        const std::vector<LogEntry> entries = store->log().entries();
        CHECK(std::none_of(entries.begin(), entries.end(), is_mix));
    }
}

TEST_CASE("what was said to be true in one store is so in the other") {
    Carried stores;
    stores.home.change([&] { stores.home.log().believe(2, true); });
    stores.carry_notes();
    stores.van_takes();
    const auto mix = stores.van.log().find(2);
    REQUIRE(mix);
    CHECK(mix->believed);
}

TEST_CASE("two sessions that were typed apart stay two, though they are told alike") {
    Carried stores;
    stores.van.change([&] {
        LoggedSession session;
        session.strategy = "tight balls";
        session.length = 5.0 * hour;
        stores.van.log().add(told(session));
    });
    CHECK(stores.home_takes().sessions == 1);
}
