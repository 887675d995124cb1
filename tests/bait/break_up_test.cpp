#include "bait/break_up.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "quantities/units.h"

using namespace baitwright;

// By hand from the rule: 3, 90, 400 s at h 0.95, 1.20, 1.40 for 60 mm; the middle of two is their geometric mean.
TEST_CASE("a ball holds for as long as its wetness, size, binder and squeeze make it") {
    const auto seconds = [](double h, double mm, double b, Squeeze s) {
        return ball_holds(h, mm * millimetre, b, s).in(second);
    };
    CHECK(seconds(0.95, 60, 0, Squeeze::firm) == Approx(3));
    CHECK(seconds(1.20, 60, 0, Squeeze::firm) == Approx(90));
    CHECK(seconds(1.30, 60, 0, Squeeze::firm) == Approx(std::sqrt(90.0 * 400)));
    CHECK(seconds(2.00, 60, 0, Squeeze::firm) == Approx(400));
    CHECK(seconds(1.20, 30, 0, Squeeze::firm) == Approx(22.5));
    CHECK(seconds(1.20, 60, 1, Squeeze::firm) == Approx(90 * std::exp(1)));
    CHECK(seconds(1.20, 60, 0, Squeeze::light) == Approx(45));
    CHECK(seconds(1.20, 60, 0, Squeeze::hard) == Approx(180));
}

// By hand: a sphere of 250 ml is 78 mm wide; seven of them are 0.55 m.
TEST_CASE("a cupful breaks so many of its own widths down") {
    CHECK(cup_breaks_after(0.7) == Approx(1));
    CHECK(cup_breaks_after(1.2) == Approx(4));
    CHECK(cup_breaks_after(1.4) == Approx(5.5));
    CHECK(cup_breaks_after(1.7) == Approx(7));
    CHECK(cup_breaks_after(2.5) == Approx(2));
    CHECK((cup_breaks_after(1.7) * diameter_of(250.0 * millilitre)).in(metre) == Approx(0.55).epsilon(0.01));
}

TEST_CASE("a binder counts by its share, and breakers take away") {
    const std::vector<BinderShare> parts{{0.5, 2.0}, {0.3, -1.0}, {0.1, 4.0}};
    CHECK(binder_sum(parts) == Approx(1.1));
}

TEST_CASE("a squeeze is known by its name") {
    CHECK(find_squeeze("Hard") == Squeeze::hard);
    CHECK_FALSE(find_squeeze("harder"));
}
