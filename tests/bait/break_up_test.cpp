#include "bait/break_up.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "quantities/units.h"

using namespace baitwright;

// By hand from the rule: 3, 90, 400 s at h 0.95, 1.20, 1.40 for 60 mm; the middle of two is their geometric mean.
TEST_CASE("a ball holds for as long as its wetness, size, binder and squeeze make it") {
    const auto seconds = [](double h, double mm, double b, Squeeze s) {
        return holds(Hold::squeezed, h, mm * millimetre, b, s).in(second);
    };
    CHECK(seconds(0.95, 60, 0, Squeeze::firm) == Approx(3));
    CHECK(seconds(1.20, 60, 0, Squeeze::firm) == Approx(90));
    CHECK(seconds(1.30, 60, 0, Squeeze::firm) == Approx(std::sqrt(90.0 * 400)));
    CHECK(seconds(1.20, 30, 0, Squeeze::firm) == Approx(22.5));
    CHECK(seconds(1.20, 60, 1, Squeeze::firm) == Approx(90 * std::exp(1)));
    CHECK(seconds(1.20, 60, 0, Squeeze::light) == Approx(45));
    CHECK(seconds(1.20, 60, 0, Squeeze::hard) == Approx(180));
}

TEST_CASE("a feed gets stronger from dusty to tacky, weaker beyond, and slop holds nothing") {
    double last = 0;
    for (int i = 50; i <= 140; ++i) {
        const double now = strength(i * 0.01).in(second);
        CHECK(now >= last);
        last = now;
    }
    for (int i = 145; i <= 209; ++i) {
        const double now = strength(i * 0.01).in(second);
        CHECK(now <= last);
        last = now;
    }
    CHECK(strength(2.1) == Time{});
    CHECK(strength(2.8) == Time{});
    CHECK(strength(0.7) < 0.2 * second);
}

// Common practice, no source: a soft level cup of 250 ml is gone in a second or two, a tacky one not before ten.
TEST_CASE("a cupful breaks by the same strength as a ball, with the little hold of a heap") {
    const auto cup = [](double h, double b) {
        return holds(Hold::heaped, h, diameter_of(250.0 * millilitre), b, Squeeze::hard).in(second);
    };
    CHECK(cup(1.7, 0) > 0.8);
    CHECK(cup(1.7, 0) < 2.5);
    CHECK(cup(1.2, 0) > cup(1.7, 0));
    CHECK(cup(1.4, 0) > 8);
    CHECK(cup(0.7, 0) < 0.01);
    CHECK(cup(1.7, 2) == Approx(cup(1.7, 0) * std::exp(1)));
    CHECK(holds(Hold::heaped, 1.2, 60.0 * millimetre, 0.0, Squeeze::firm) <
          0.05 * holds(Hold::squeezed, 1.2, 60.0 * millimetre, 0.0, Squeeze::light));
}

TEST_CASE("what holds long goes as lumps, what does not as grains") {
    CHECK(bound_share(0.7, 0.0) < 0.05);
    CHECK(bound_share(1.2, 0.0) == Approx(90.0 / 93));
    CHECK(bound_share(1.7, 0.0) < bound_share(1.2, 0.0));
    CHECK(bound_share(1.2, -2.0) < bound_share(1.2, 0.0));
    CHECK(bound_share(2.2, 0.0) == 0);
}

TEST_CASE("a binder counts by its share, and breakers take away") {
    const std::vector<BinderShare> parts{{0.5, 2.0}, {0.3, -1.0}, {0.1, 4.0}};
    CHECK(binder_sum(parts) == Approx(1.1));
}

TEST_CASE("a squeeze is known by its name") {
    CHECK(find_squeeze("Hard") == Squeeze::hard);
    CHECK_FALSE(find_squeeze("harder"));
}
