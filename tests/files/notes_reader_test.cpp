// Session notes: there and back, every fault at its place, and large ones in proportion.
#include <rapidcheck.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <chrono>
#include <ctime>

#include "bait/log_limits.h"
#include "files/any_log_entry.h"
#include "files/notes_reader.h"
#include "files/notes_text.h"

using namespace baitwright;

namespace {

const Date notes_today = parse_date("2026-11-25");

constexpr const char* page_notes = R"(# Notes of a session from a bank page of baitwright 0.1.0
[[session]]
strategy = "open carpet"
on = 2026-11-21
start = "9:30"
length = "5 h"
anglers = 1
page = "5d1f0c9a"
note = "wind got up at noon"
[[session.put_in]]
at = "12 min"
of = "silt bed"
[[session.put_in]]
[[session.mixed]]
of = "silt bed"
dry = "1 kg"
water = "740 ml"
feel = "firm"
[[session.used]]
of = "silt bed"
amount = "1.5 l"
[[session.catch]]
at = "-5 min"
fish = "bream"
count = 2
mass = "1.2 kg"
)";

Notes read_noted(const std::string& text) {
    return read_notes(text, "notes.toml", notes_today);
}

/// All entries of notes, numbered, those of a session belonging to it.
std::vector<LogEntry> numbered(const Notes& notes) {
    std::vector<LogEntry> entries;
    for (const NotedGroup& group : notes.groups) {
        const auto first = static_cast<std::int64_t>(entries.size()) + 1;
        for (LogEntry entry : group.entries) {
            entry.id = static_cast<std::int64_t>(entries.size()) + 1;
            if (entry.id != first) entry.session = first;
            entries.push_back(std::move(entry));
        }
    }
    return entries;
}

}  // namespace

TEST_CASE("what the bank page saves is read: the session, its put-ins, mix, use and catch") {
    const Notes notes = read_noted(page_notes);
    REQUIRE(notes.faults.empty());
    REQUIRE(notes.groups.size() == 1);
    const std::vector<LogEntry>& entries = notes.groups[0].entries;
    REQUIRE(entries.size() == 6);
    const auto& session = std::get<LoggedSession>(entries[0].what);
    CHECK(session.strategy == "open carpet");
    CHECK(session.start == "09:30");
    CHECK(session.length.in(hour) == Approx(5));
    CHECK(session.page == "5d1f0c9a");
    CHECK(session.note == "wind got up at noon");
    CHECK(entries[0].on == parse_date("2026-11-21"));
    CHECK(std::get<LoggedPutIn>(entries[1].what).at->in(minute) == Approx(12));
    CHECK(std::get<LoggedPutIn>(entries[2].what).of.empty());
    const auto& mix = std::get<LoggedMix>(entries[3].what);
    CHECK(mix.dry->in(gram) == Approx(1000));
    CHECK(mix.water->in(gram) == Approx(740));
    CHECK(mix.feel == "firm");
    CHECK(entries[3].on == entries[0].on);
    CHECK(std::get<Volume>(std::get<LoggedUse>(entries[4].what).amount).in(litre) == Approx(1.5));
    const auto& caught = std::get<LoggedCatch>(entries[5].what);
    CHECK(caught.at->in(minute) == Approx(-5));
    CHECK(caught.count == 2);
    CHECK(caught.mass->in(kilogram) == Approx(1.2));
}

TEST_CASE("any log is read back from its notes as it was written") {
    CHECK(rc::check("there and back", [] {
        std::vector<LogEntry> written;
        std::int64_t id = 0;
        const int groups = *rc::gen::inRange(0, 4);
        for (int group = 0; group < groups; ++group) {
            const Date on = notes_today - std::chrono::days(*rc::gen::inRange(0, 400));
            if (any_log::maybe()) {
                written.push_back(any_log::entry(any_log::thing(any_log::Belonging::to_none), ++id, 0, on));
                continue;
            }
            written.push_back(any_log::entry(any_log::session(), ++id, 0, on));
            const std::int64_t session = id;
            for (int i = *rc::gen::inRange(0, 5); i > 0; --i)
                written.push_back(any_log::entry(any_log::thing(any_log::Belonging::to_a_session), ++id, session,
                                                 any_log::maybe() ? on : on - std::chrono::days(1)));
        }
        if (written.empty()) return;
        const std::string text = notes_text(written);
        const Notes notes = read_noted(text);
        RC_ASSERT(notes.faults.empty());
        std::vector<LogEntry> back = numbered(notes);
        RC_ASSERT(back.size() == written.size());
        const std::vector<LogEntry> as_read = back;
        const auto session_of = [](const std::vector<LogEntry>& all, const LogEntry& entry) -> const LogEntry* {
            for (const LogEntry& one : all)
                if (entry.session != 0 && one.id == entry.session) return &one;
            return nullptr;
        };
        for (const LogEntry& entry : written) {
            const auto found = std::find_if(back.begin(), back.end(), [&](const LogEntry& one) {
                const LogEntry *there = session_of(written, entry), *here = session_of(as_read, one);
                return any_log::same(entry, one) && (there == nullptr) == (one.session == 0) &&
                       (there == nullptr || any_log::same(*there, *here));
            });
            RC_ASSERT(found != back.end());
            found->on = Date{};  // each answers for one alone
        }
        RC_ASSERT(notes_text(numbered(notes)).size() == text.size());
    }));
}

TEST_CASE("every slip in notes is told at its place, all at once") {
    struct Slip {
        const char* text;
        int line;
        const char* code;
        const char* says;
    };
    const Slip slips[] = {
        {"[[session]]\nstrategy = \"open carpet\"\n", 1, "missing-value", "'on' is missing"},
        {"[[session]]\non = 2026-11-26\n", 2, "in-the-future", "2026-11-26 has not come yet"},
        {"[[session]]\non = 2026-11-21\nlength = \"80 h\"\n", 3, "out-of-range", "72 hours"},
        {"[[session]]\non = 2026-11-21\nanglers = 1.5\n", 3, "out-of-range", "whole number"},
        {"[[session]]\non = 2026-11-21\nclarity = \"murky\"\n", 3, "unknown-word", "'murky'"},
        {"[[session]]\non = 2026-11-21\nstart = \"25:00\"\n", 3, "not-a-clock", "25:00"},
        {"[[session]]\non = 2026-11-21\nwater_temperature = \"12\"\n", 3, "no-unit", "no unit"},
        {"[[session]]\non = 2026-11-21\nwater_temperature = \"60 degC\"\n", 3, "out-of-range", "0 to 40 degC"},
        {"[[session]]\non = 2026-11-21\ncost = \"6.20\"\n", 3, "no-currency", "currency"},
        {"[[session]]\non = 2026-11-21\nweather = \"fine\"\n", 3, "unknown-key", "'weather'"},
        {"[[session]]\non = 2026-11-21\n[[session.mixed]]\nof = \"silt bed\"\ndry = \"500 g\"\nwater = \"2 l\"\n", 6,
         "out-of-range", "three times the dry mass"},
        {"[[session]]\non = 2026-11-21\n[[session.used]]\nof = \"silt bed\"\n", 3, "missing-value", "'amount'"},
        {"[[session]]\non = 2026-11-21\n[[session.catch]]\ncount = -1\n", 4, "out-of-range", "'count'"},
        {"[[mixed]]\nof = \"silt bed\"\n", 1, "missing-value", "'on' is missing"},
        {"[[soaked]]\non = 2026-11-21\nof = \"x\"\ndry = \"100 g\"\ndrained = \"40 g\"\nunder_water = \"6 min\"\n", 5,
         "out-of-range", "no more than they did dry"},
        {"[[weighed]]\non = 2026-11-21\nof = \"x\"\nvessel = \"1 l\"\nweighs = \"9 kg\"\n", 5, "out-of-range", "3 kg"},
        {"[[seen]]\non = 2026-11-21\nof = \"x\"\nhold = \"40 s\"\n", 1, "no-form", "neither a cup nor a ball"},
        {"[[seen]]\non = 2026-11-21\nof = \"x\"\ncup = \"250 ml\"\n", 3, "out-of-range", "nothing was seen"},
        {"[[seen]]\non = 2026-11-21\nof = \"x\"\ncup = \"250 ml\"\ndepth = \"1 m\"\nbreaks_at = \"2 m\"\n", 6,
         "out-of-range", "deeper than the water"},
        {"[session]\non = 2026-11-21\n", 1, "single-brackets", "single brackets"},
        {"", 1, "nothing-here", "no notes"},
        {"[[mixing]]\nname = \"x\"\n", 1, "unknown-key", "'mixing'"},
        {"[[mix]]\nname = \"x\"\n", 1, "missing-value", "a mix has no part"},
    };
    for (const Slip& slip : slips) {
        INFO(slip.text);
        const Notes notes = read_noted(slip.text);
        REQUIRE(notes.faults.size() == 1);
        CHECK(notes.faults[0].line == slip.line);
        CHECK(notes.faults[0].code == slip.code);
        CHECK_THAT(notes.faults[0].message, Catch::Contains(slip.says));
        CHECK_FALSE(notes.faults[0].hint.empty());
        CHECK(notes.faults[0].file == "notes.toml");
    }
    const Notes several = read_noted("[[bag]]\n[[bag]]\non = 2027-01-01\nof = \"x\"\n");
    CHECK(several.faults.size() == 3);
}

// Time of the processor, so that what else runs on the machine does not count.
TEST_CASE("notes of 2,000,000 bytes are read in the time of ten of 200,000") {
    const auto notes_of = [](std::size_t bytes) {
        std::string text;
        while (text.size() < bytes) text += std::string(page_notes) + "\n";
        return text;
    };
    const auto shortest = [](const std::string& text, int times) {
        double best = 1e9;
        for (int i = 0; i < times; ++i) {
            const std::clock_t begin = std::clock();
            const Notes notes = read_noted(text);
            REQUIRE(notes.faults.empty());
            best = std::min(best, static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC);
        }
        return best;
    };
    const std::string small = notes_of(200000), large = notes_of(2000000);
    CHECK(shortest(large, 2) < 25 * shortest(small, 5));
}

TEST_CASE("a session's length without quotes is refused with how to write it") {
    const Notes notes = read_notes("[[session]]\nstrategy = \"open carpet\"\non = 2026-07-12\nlength = 5\n", "a.toml",
                                   parse_date("2026-11-25"));
    REQUIRE(notes.faults.size() == 1);
    CHECK(notes.faults[0].message == "'length' must be text such as \"5 h\", not the number 5");
    CHECK(notes.faults[0].hint == "write it in quotes, with its unit");
}
