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
