#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <optional>

#include "library/canonical_dump.h"
#include "library/change_shed.h"
#include "library/merge_store.h"
#include "library/open_library.h"
#include "library/own_entries.h"
#include "quantities/fault_of.h"
#include "quantities/units.h"
#include "report/merge_report.h"
#include "store/past_triggers.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

const Date told_day = parse_date("2026-11-28");
constexpr const char* nothing_new = "is here already";

/// A store, and a copy of it that goes its own way.
class TwoStores {
public:
    template <class Change>
    explicit TwoStores(Change&& begin) {
        {
            Store begun = open_store(folder_ / "a.db");
            begin(begun);
        }
        fs::copy_file(folder_ / "a.db", folder_ / "b.db");
        ours.emplace(open_store(folder_ / "a.db"));
        theirs.emplace(open_store(folder_ / "b.db"));
    }

    /// Looked at first: what would be told is what is, and nothing is changed by looking.
    MergeAnswer merge() {
        const auto before = canonical_dump(folder_ / "a.db");
        const MergeAnswer shown = merge_store(*ours, folder_ / "b.db", told_day, MergeDoing::only_shown);
        CHECK(canonical_dump(folder_ / "a.db") == before);
        MergeAnswer done = merge_store(*ours, folder_ / "b.db", told_day);
        CHECK(shown.usual == done.usual);
        CHECK(shown.learnt == done.learnt);
        CHECK(shown.beliefs == done.beliefs);
        CHECK(shown.anything() == done.anything());
        return done;
    }

    TemporaryFolder folder_;
    std::optional<Store> ours, theirs;
};

std::string text_told(const MergeAnswer& answer) {
    std::string text = merge_reply(answer).told().text();
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

bool tells(const MergeAnswer& answer, const std::string& words) {
    return text_told(answer).find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("prices that both were told apart are said to be so, once, and all are kept") {
    TwoStores two([](Store&) {});
    const auto tell = [](Store& store, const char* price, Mass size, const char* on) {
        tell_price(store, "brown crumb", {size, parse_money(price), parse_date(on), {}});
    };
    tell(*two.ours, "£2.30", 1.0 * kilogram, "2026-06-05");
    tell(*two.ours, "£4.10", 2.0 * kilogram, "2026-06-05");
    tell(*two.theirs, "£12", 10.0 * kilogram, "2026-06-10");
    const MergeAnswer answer = two.merge();
    CHECK_FALSE(tells(answer, nothing_new));
    CHECK(tells(answer, "Prices were told in both; these stand, the others are old prices now:"));
    CHECK(tells(answer, "- of brown crumb yours"));
    CHECK(tells(answer, "baitwright price history \"brown crumb\""));
    CHECK(merge_reply(answer).json()["prices_apart"] == Json({{{"name", "brown crumb"}, {"stands", "ours"}}}));
    const std::vector<Pack> old = two.ours->old_prices("brown crumb");
    CHECK(std::any_of(old.begin(), old.end(), [](const Pack& pack) { return pack.price == parse_money("£12"); }));
    CHECK(tells(two.merge(), nothing_new));
}

TEST_CASE("what was renamed in one store is no change of what refers to it") {
    TwoStores two([](Store& store) {
        store.change([&] {
            Recipe mix = store.recipe("silt bed");
            mix.name = "reed corner";
            store.put(mix, EntryOwner::person);
            Strategy strategy = store.strategy("tight balls");
            strategy.name = "long night";
            for (Feed& feed : strategy.feeds)
                for (FeedPart& part : feed.parts) part.of = "reed corner";
            store.put(strategy, EntryOwner::person);
        });
    });
    two.ours->change([&] { two.ours->entries().rename(EntryKind::mix, "reed corner", "reed edge"); });
    const MergeAnswer answer = two.merge();
    CHECK(answer.conflicts.empty());
    CHECK(two.ours->strategy("long night").feeds.front().parts.front().of == "reed edge");
}

TEST_CASE("a price that only one was told of makes no word about both") {
    TwoStores two([](Store&) {});
    tell_price(*two.theirs, "brown crumb", {10.0 * kilogram, parse_money("£12"), told_day, {}});
    CHECK(two.merge().prices_apart.empty());
    tell_price(*two.ours, "brown crumb", {10.0 * kilogram, parse_money("£13"), told_day, {}});
    CHECK(two.merge().prices_apart.empty());
}

TEST_CASE("what a merge changes of what is usual is told, by its key, and once") {
    TwoStores two([](Store& store) { store.change([&] { store.put_usual("pump", {"80ml"}); }); });
    two.theirs->change([&] {
        two.theirs->put_usual("pump", {"120ml"});
        two.theirs->put_usual("people", {"3"});
    });
    const MergeAnswer answer = two.merge();
    CHECK(answer.usual == std::vector<std::string>{"people", "pump"});
    CHECK(tells(answer, "Usual from the other store: people and pump."));
    CHECK_FALSE(tells(answer, nothing_new));
    CHECK(merge_reply(answer).json()["usual"] == Json({"people", "pump"}));
    CHECK(two.ours->usual().at("pump") == std::vector<std::string>{"120ml"});
    CHECK(tells(two.merge(), nothing_new));
}

TEST_CASE("what is said of what is usual again, in the same words, is nothing new") {
    TwoStores two([](Store& store) { store.change([&] { store.put_usual("pump", {"80ml"}); }); });
    two.theirs->change([&] { two.theirs->put_usual("pump", {"80ml"}); });
    CHECK(tells(two.merge(), nothing_new));
}

TEST_CASE("what a merge takes of what was learnt is told") {
    TwoStores two([](Store&) {});
    two.theirs->change([&] {
        two.theirs->log().put_learnt({0.1, 0.2, {}, 1, {0.1, 0.2}},
                                     {{"silt bed", LearntFactor{0.1, 0.1, 2}, std::nullopt, std::nullopt}});
    });
    const MergeAnswer answer = two.merge();
    CHECK(answer.learnt);
    CHECK(tells(answer, "What was learnt is the other store's"));
    CHECK_FALSE(tells(answer, nothing_new));
    CHECK(merge_reply(answer).json()["learnt"] == true);
    CHECK(tells(two.merge(), nothing_new));
}

TEST_CASE("entries of the log that are believed by a merge, or no more, are counted and told") {
    std::int64_t first = 0;
    TwoStores two([&](Store& store) {
        store.change([&] {
            first = store.log().add({0, told_day, 0, LoggedBag{"brown crumb"}});
            store.log().add({0, told_day, 0, LoggedBag{"brown crumb"}});
        });
    });
    two.theirs->change([&] { two.theirs->log().believe(first, true); });
    const MergeAnswer answer = two.merge();
    CHECK(answer.beliefs == 1);
    CHECK(tells(answer, "Believed, or no more, as there: 1 entry of the log."));
    CHECK_FALSE(tells(answer, nothing_new));
    CHECK(merge_reply(answer).json()["beliefs"] == 1);
    CHECK(tells(two.merge(), nothing_new));
}

TEST_CASE("what both changed is something told, be it that yours stands") {
    TwoStores two([](Store&) {});
    const auto note = [](Store& store, const std::string& words) {
        store.change([&] {
            Recipe mix = store.recipe("silt bed");
            mix.note = words;
            store.put(mix, EntryOwner::person);
        });
    };
    note(*two.theirs, "theirs");
    note(*two.ours, "mine");
    note(*two.ours, "mine again");
    const MergeAnswer answer = two.merge();
    REQUIRE(answer.conflicts.size() == 1);
    CHECK(answer.entries.empty());
    CHECK(tells(answer, "Changed in both"));
    CHECK_FALSE(tells(answer, nothing_new));
    CHECK(tells(two.merge(), nothing_new));
}

TEST_CASE("after a merge the last count is that of the latest day, whichever came in last") {
    const auto on = [](const char* day) { return Reach{parse_date(day), std::nullopt}; };
    const auto grams = [](double mass) { return in_milligrams(mass * gram); };
    TwoStores two([&](Store& store) {
        Arrival bag{"brown crumb", StockKind::ingredient, {}};
        bag.lot.got_on = parse_date("2026-11-01");
        bag.lot.left = grams(3000);
        keep(store, bag);
    });
    count(*two.ours, {"brown crumb", StockKind::ingredient, grams(2500), std::nullopt}, on("2026-11-10"));
    const StockChangeAnswer used = take(*two.ours, Happening::used, {"brown crumb", grams(300)}, on("2026-11-12"));
    count(*two.theirs, {"brown crumb", StockKind::ingredient, grams(2400), std::nullopt}, on("2026-11-05"));
    two.merge();
    CHECK(fault_of([&] {
              take(*two.ours, Happening::used, {"brown crumb", grams(100)}, on("2026-11-07"));
          }).code == "before-count");
    CHECK(fault_of([&] { undo(*two.ours, used.receipt.entry, told_day); }).code == "");
}

TEST_CASE("a damage met while merging is told of the other store, with nothing taken in") {
    const TemporaryFolder folder;
    Store ours = open_store(folder / "a.db");
    {
        Store theirs = open_store(folder / "b.db");
        copy_entry(theirs, EntryKind::mix, "silt bed", "mine", told_day);
    }
    REQUIRE(run_past_triggers(folder / "b.db", "UPDATE recipe SET folded = 'another' WHERE name = 'mine'"));
    const auto before = canonical_dump(folder / "a.db");
    const Fault fault = fault_of([&] { merge_store(ours, folder / "b.db", told_day); });
    CHECK(fault.code == "damaged-store");
    CHECK(fault.message == "the store '" + (folder / "b.db").string() +
                               "' is damaged: 'mine' is listed in it, and cannot be found by its name");
    CHECK_THAT(fault.hint, Catch::Contains("nothing was taken in"));
    CHECK(canonical_dump(folder / "a.db") == before);
}
