#include <catch2/catch.hpp>

#include "quantities/fault_of.h"
#include "quantities/quantity_text.h"
#include "quantities/units.h"

using namespace baitwright;

// Common practice, no source.
TEST_CASE("balls and pots are named by the sizes that anglers name") {
    CHECK(parse_ball_size("walnut").in(millimetre) == Approx(30));
    CHECK(parse_ball_size("golf ball").in(millimetre) == Approx(43));
    CHECK(parse_ball_size("egg").in(millimetre) == Approx(50));
    CHECK(parse_ball_size("satsuma").in(millimetre) == Approx(60));
    CHECK(parse_ball_size(" Orange ").in(millimetre) == Approx(75));
    CHECK(parse_vessel_size("toss pot 10").in(millilitre) == Approx(10));
    CHECK(parse_vessel_size("toss pot 25").in(millilitre) == Approx(25));
    CHECK(parse_vessel_size("Toss  Pot 40").in(millilitre) == Approx(40));
    CHECK(parse_vessel_size("cup 100").in(millilitre) == Approx(100));
    CHECK(parse_vessel_size("cup 250").in(millilitre) == Approx(250));
    CHECK(parse_vessel_size("cup 500").in(millilitre) == Approx(500));
}

TEST_CASE("a size may be measured instead of named") {
    CHECK(parse_ball_size("55 mm").in(millimetre) == Approx(55));
    CHECK(parse_vessel_size("½ pt").in(imperial_pint) == Approx(0.5));
    CHECK(parse_vessel_size("250ml").in(millilitre) == Approx(250));
}

TEST_CASE("a mistyped size is answered with the one that was meant") {
    const auto fault = fault_of([] { parse_ball_size("satsum"); });
    CHECK(fault.code == "unknown-size");
    CHECK(fault.message == "'satsum' is not a size of a ball known here");
    CHECK(fault.hint == "did you mean 'satsuma'?");
    CHECK(fault_of([] { parse_vessel_size("tosspot 25"); }).hint == "did you mean 'toss pot 25'?");
    CHECK(fault_of([] { parse_vessel_size("cup 250 ml"); }).hint == "did you mean 'cup 250'?");
}

TEST_CASE("a size that is not there is answered with all that are") {
    const auto fault = fault_of([] { parse_vessel_size("cup 300"); });
    CHECK(fault.code == "unknown-size");
    CHECK(fault.hint ==
          "the named ones are toss pot 10, toss pot 25, toss pot 40, cup 100, cup 250, cup 500; or write it as in "
          "250 ml");
    CHECK(fault_of([] { parse_vessel_size("cup"); }).hint == fault.hint);
    CHECK(fault_of([] { parse_ball_size("melon"); }).hint ==
          "the named ones are walnut, golf ball, egg, satsuma, orange; or write it as in 55 mm");
}

TEST_CASE("a measured size is held to its dimension") {
    CHECK(fault_of([] { parse_ball_size("250 ml"); }).code == "wrong-dimension");
    CHECK(fault_of([] { parse_vessel_size("250"); }).code == "no-unit");
    CHECK(fault_of([] { parse_ball_size(""); }).code == "not-a-number");
}
