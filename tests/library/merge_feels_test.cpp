#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <random>

#include "bait/feel.h"
#include "library/export_all.h"
#include "library/import_all.h"
#include "library/merge_store.h"
#include "report/merge_report.h"
#include "store/temporary_folder.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

const Date feels_day = parse_date("2026-11-28");

const std::vector<Feel> begun_feels{{"crumbly", 0.9, 1.0, ""}, {"firm", 1.2, 1.3, ""}, {"tacky", 1.5, 1.6, ""}};

void put_feel(Store& store, const Feel& feel) {
    store.change([&] { store.put(feel, EntryOwner::person); });
}

std::string feels_of(const Store& store) {
    std::string text;
    for (const Feel& feel : store.feels())
        text += feel.name + " " + std::to_string(feel.aim.si()) + " " + std::to_string(feel.below.si()) + "\n";
    return text;
}

/// Stores of one beginning.
class StoresOfFeels {
public:
    explicit StoresOfFeels(std::size_t count) {
        {
            Store begun = Store::open(folder_ / "begun.db");
            begun.change([&] {
                for (const Feel& feel : begun_feels) begun.put(feel, EntryOwner::shipped);
            });
        }
        for (std::size_t i = 0; i < count; ++i) {
            fs::copy_file(folder_ / "begun.db", path(i));
            stores.push_back(Store::open(path(i)));
        }
    }
    [[nodiscard]] fs::path path(std::size_t i) const { return folder_ / (std::to_string(i) + ".db").c_str(); }
    MergeAnswer merge(std::size_t into, std::size_t from) { return merge_store(stores[into], path(from), feels_day); }

    TemporaryFolder folder_;
    std::vector<Store> stores;
};

std::string words_of(const MergeAnswer& answer) {
    std::string text = merge_reply(answer).told().text();
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

}  // namespace

TEST_CASE("feels that would not rise together are all as the store with the later change has them, and that is told") {
    for (const bool theirs_later : {false, true}) {
        CAPTURE(theirs_later);
        StoresOfFeels two(2);
        put_feel(two.stores[0], {"firm", 1.2, 1.44, ""});
        put_feel(two.stores[0], {"firm", 1.2, 1.45, ""});
        put_feel(two.stores[1], {"tacky", 1.35, 1.42, ""});
        if (theirs_later)
            for (int i = 0; i < 5; ++i) put_feel(two.stores[1], {"tacky", 1.35, 1.43 + 0.01 * i, ""});
        const std::string wanted = feels_of(two.stores[theirs_later ? 1 : 0]);
        const MergeAnswer shown = merge_store(two.stores[0], two.path(1), feels_day, MergeDoing::only_shown);
        const MergeAnswer answer = two.merge(0, 1);
        REQUIRE(answer.feels_as_one);
        CHECK(shown.feels_as_one == answer.feels_as_one);
        CHECK((*answer.feels_as_one == MergeConflict::Stands::theirs) == theirs_later);
        CHECK(feels_of(two.stores[0]) == wanted);
        const std::string told = words_of(answer);
        CHECK(told.find("would not rise from the driest to the") != std::string::npos);
        CHECK(told.find("here already") == std::string::npos);
        CHECK(merge_reply(answer).json()["feels_as_one"] == (theirs_later ? "theirs" : "ours"));
        static_cast<void>(two.merge(1, 0));
        CHECK(feels_of(two.stores[1]) == wanted);
        CHECK_FALSE(two.merge(0, 1).anything());
        static_cast<void>(export_all(two.stores[0], two.folder_ / "kept", "baitwright test", feels_day));
        CHECK_NOTHROW(import_all(two.folder_ / "again.db", two.folder_ / "kept", feels_day));
    }
}

TEST_CASE(
    "of feels that stand as one, a feel that only the other has stays where it finds a place, and is kept where not") {
    StoresOfFeels two(2);
    put_feel(two.stores[0], {"dusty", 0.5, 0.6, ""});    // below all of theirs
    put_feel(two.stores[0], {"gluey", 1.41, 1.44, ""});  // amid their tacky
    for (int i = 0; i < 6; ++i) put_feel(two.stores[1], {"tacky", 1.35, 1.42 + 0.01 * i, ""});
    const MergeAnswer answer = two.merge(0, 1);
    CHECK(answer.feels_as_one == MergeConflict::Stands::theirs);
    CHECK(find_feel(two.stores[0].feels(), "dusty") != nullptr);
    CHECK(find_feel(two.stores[0].feels(), "gluey") == nullptr);
    CHECK(two.stores[0].retired("feel", "gluey").size() == 1);
    CHECK(words_of(answer).find("feel 'gluey': has no place among the others") != std::string::npos);
    static_cast<void>(two.merge(1, 0));
    CHECK(feels_of(two.stores[0]) == feels_of(two.stores[1]));
}

TEST_CASE("feels that rise together come in one by one") {
    StoresOfFeels two(2);
    put_feel(two.stores[0], {"crumbly", 0.8, 1.0, ""});
    put_feel(two.stores[1], {"tacky", 1.45, 1.6, ""});
    const MergeAnswer answer = two.merge(0, 1);
    CHECK_FALSE(answer.feels_as_one);
    CHECK(answer.entries == decltype(answer.entries){{"feel", 1}});
    CHECK(find_feel(two.stores[0].feels(), "crumbly")->aim == 0.8);
    CHECK(find_feel(two.stores[0].feels(), "tacky")->aim == 1.45);
}

TEST_CASE("whatever two stores make of their feels, both rise and are one after each was merged into the other") {
    for (unsigned seed = 1; seed <= 200; ++seed) {
        CAPTURE(seed);
        std::mt19937 dice(seed);
        const auto below = [&](int end) { return std::uniform_int_distribution<int>(0, end - 1)(dice); };
        StoresOfFeels two(2);
        for (Store& store : two.stores)
            for (int changes = below(5); changes > 0; --changes) {
                static const std::vector<std::string> names{"crumbly", "firm", "tacky", "soft", "dusty"};
                const double aim = 0.7 + 0.05 * below(20);
                const Feel feel{names[static_cast<std::size_t>(below(5))], aim, aim + 0.01 + 0.05 * below(5), ""};
                std::vector<Feel> after = store.feels();
                std::erase_if(after, [&](const Feel& old) { return old.name == feel.name; });
                after.push_back(feel);
                std::sort(after.begin(), after.end(), [](const Feel& a, const Feel& b) { return a.below < b.below; });
                if (first_not_rising(after) == nullptr) put_feel(store, feel);
            }
        static_cast<void>(two.merge(0, 1));
        static_cast<void>(two.merge(1, 0));
        for (const Store& store : two.stores) CHECK(first_not_rising(store.feels()) == nullptr);
        CHECK(feels_of(two.stores[0]) == feels_of(two.stores[1]));
        CHECK_FALSE(two.merge(0, 1).anything());
        CHECK_FALSE(two.merge(1, 0).anything());
    }
}
