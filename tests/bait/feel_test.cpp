#include "bait/feel.h"

#include <catch2/catch.hpp>

#include "bait/draft_shelf.h"

using namespace baitwright;

TEST_CASE("a feel is found by name, whatever its case and blanks") {
    const auto feels = draft::feels();
    REQUIRE(find_feel(feels, "  Firm ") != nullptr);
    CHECK(find_feel(feels, "  Firm ")->aim == 1.20);
    CHECK(find_feel(feels, "fir") == nullptr);
}

TEST_CASE("each feel's aim lies in its own band") {
    const auto feels = draft::feels();
    for (const Feel& feel : feels) CHECK(feel_of(feels, feel.aim).name == feel.name);
}

TEST_CASE("feels rise where each aim lies in its own band and no band reaches into another") {
    CHECK(first_not_rising({}) == nullptr);
    CHECK(first_not_rising(draft::feels()) == nullptr);
    const auto wrong = [](const std::vector<Feel>& feels) {
        const Feel* found = first_not_rising(feels);
        return found ? found->name : std::string();
    };
    CHECK(wrong({{"a", 0.8, 1.0, ""}, {"b", 1.0, 1.1, ""}}).empty());
    CHECK(wrong({{"a", 1.0, 1.0, ""}}) == "a");
    CHECK(wrong({{"a", 0.8, 1.45, ""}, {"b", 1.35, 1.5, ""}}) == "b");
    CHECK(wrong({{"a", 0.8, 1.0, ""}, {"b", 1.0, 1.0, ""}}) == "b");
}

TEST_CASE("a band ends where the next begins, and the last takes all above") {
    const auto feels = draft::feels();
    CHECK(feel_of(feels, 0.0).name == "dusty");
    CHECK(feel_of(feels, 0.8199).name == "dusty");
    CHECK(feel_of(feels, 0.82).name == "crumbly");
    CHECK(feel_of(feels, 1.07).name == "firm");
    CHECK(feel_of(feels, 1.30).name == "tacky");
    CHECK(feel_of(feels, 1.55).name == "soft");
    CHECK(feel_of(feels, 1.90).name == "slop");
    CHECK(feel_of(feels, 99.0).name == "slop");
}
