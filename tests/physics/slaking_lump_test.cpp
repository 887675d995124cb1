#include "physics/slaking_lump.h"

#include <catch2/catch.hpp>

#include "quantities/units.h"

using namespace baitwright;

namespace {

const SlakingLump lump{0.4 * metre_per_second, 20.0 * second};

}  // namespace

// By hand: d^2 falls evenly, so after three quarters of its time half its width and an eighth of its mass are left.
TEST_CASE("a lump wears from outside, its width squared falling evenly") {
    CHECK(lump.left(15.0 * second) == Approx(0.125));
    CHECK(lump.gone(0.875).in(second) == Approx(15));
    CHECK(lump.left(20.0 * second) == 0);
    CHECK(lump.left(99.0 * second) == 0);
    CHECK(lump.gone(0.0) == Time{});
    CHECK(lump.gone(1.0).in(second) == Approx(20));
}

// The way is the sum of the speed, which goes with the root of the width: here by ten thousand slices.
TEST_CASE("a lump slows as it wears, and its way is the sum of its speed") {
    for (const double until : {0.5, 7.0, 19.0}) {
        double way = 0;
        for (int i = 0; i < 10000; ++i) way += 0.4 * std::pow(1 - until * (i + 0.5) / 10000 / 20, 0.25) * until / 10000;
        CHECK(lump.way(until * second).in(metre) == Approx(way).epsilon(1e-6));
        CHECK(lump.sinks(way * metre)->in(second) == Approx(until).epsilon(1e-6));
    }
    CHECK_FALSE(lump.sinks(6.5 * metre));  // 0.8 x 0.4 m/s x 20 s is 6.4 m
}
