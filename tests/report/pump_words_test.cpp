#include "report/pump_words.h"

#include <catch2/catch.hpp>

using namespace baitwright;

TEST_CASE("what is pumped in lots says how many, and the strokes of each") {
    PlannedSoak soak;
    soak.strokes = 8;
    CHECK(pump_words(soak) == "8 strokes of the pump");
    soak.lots = 6;
    CHECK(pump_words(soak) == "6 lots, 8 strokes each");
    soak.strokes = 1;
    CHECK(pump_words(soak) == "6 lots, 1 stroke each");
}
