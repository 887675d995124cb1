// How closely a hand reads a feel.
#include "bait/felt_wetness.h"

#include <catch2/catch.hpp>

using namespace baitwright;

TEST_CASE("a feel is read to a third of its band, and those at the ends to no more than the widest between") {
    const std::vector<Feel> feels{{"dry", 0.7, 0.82, {}},
                                  {"crumbly", 0.95, 1.07, {}},
                                  {"firm", 1.2, 1.3, {}},
                                  {"soft", 1.7, 1.9, {}},
                                  {"soup", 2.1, 3.0, {}}};
    CHECK(double(reading_spread(feels, feels[1])) == Approx(0.25 / 3));
    CHECK(double(reading_spread(feels, feels[2])) == Approx(0.23 / 3));
    CHECK(double(reading_spread(feels, feels[3])) == Approx(0.60 / 3));
    CHECK(double(reading_spread(feels, feels[0])) == Approx(0.60 / 3));
    CHECK(double(reading_spread(feels, feels[4])) == Approx(0.60 / 3));
}

TEST_CASE("of two feels, or one that is on no shelf, a quarter of the scale is the band at most") {
    const std::vector<Feel> two{{"dry", 0.7, 1.0, {}}, {"wet", 1.5, 1.6, {}}};
    CHECK(double(reading_spread(two, two[0])) == Approx(0.25 / 3));
    CHECK(double(reading_spread(two, two[1])) == Approx(0.25 / 3));
    CHECK(double(reading_spread(two, {"other", 1.0, 1.2, {}})) == Approx(0.25 / 3));
}
