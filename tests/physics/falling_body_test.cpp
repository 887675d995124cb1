#include "physics/falling_body.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "physics/bench_waters.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

namespace {

/// A ball without air.
FallingBody ball(double millimetres, double density) {
    const Volume volume =
        std::numbers::pi / 6 * (millimetres * millimetre) * (millimetres * millimetre) * (millimetres * millimetre);
    FallingBody body;
    body.volume = volume;
    body.mass = volume * Density::from_si(density);
    body.under_water = volume * Density::from_si(density - 998.207);
    return body;
}

constexpr Time ever = 1e5 * second;

}  // namespace

// Source: tests/reference/fall_and_drift.csv, row FALL_FROM_REST-01: v = vt tanh(t/tau), added mass 1/2.
TEST_CASE("a ball falls from rest as the closed form has it") {
    for (const auto& row : reference::rows_in("fall_and_drift.csv")) {
        if (row.at("topic") != "FALL_FROM_REST") continue;
        const auto in = numbers_in(row.at("inputs")), expected = numbers_in(row.at("expected"));
        // Its drag is that of a smooth sphere at its own final speed, which the row tells too.
        const Length across = in.at(0) * millimetre;
        const double final_speed = terminal_speed(across, Density::from_si(in.at(1)), bench_water()).si();
        CHECK(final_speed == Approx(in.at(3)).epsilon(1e-4));  // the 3 of kg/m3 comes before it
        FallingBody body = ball(in.at(0), in.at(1));
        body.drag = haider_levenspiel_drag(final_speed * across.si() * 998.207 / 1.0016e-3);
        const FallPoint point =
            fall_from_rest(body, bench_water(), still(100), 50.0 * metre, expected.at(1) * second).value();
        CHECK(point.speed.si() == Approx(0.95 * final_speed).epsilon(1e-4));
        CHECK(point.depth.si() == Approx(expected.at(2)).epsilon(1e-4));
        const FallPoint reached = fall_from_rest(body, bench_water(), still(100), expected.at(2) * metre, ever).value();
        CHECK(reached.at.si() == Approx(expected.at(1)).epsilon(1e-4));
        CHECK(fall_from_rest(body, bench_water(), still(100), 50.0 * metre, ever)->speed.si() ==
              Approx(final_speed).epsilon(1e-6));
    }
}

TEST_CASE("a fall told at several times is the same fall") {
    FallingBody airy = ball(50, 1150);
    airy.air = 2 * airy.under_water / Density::from_si(998.207);  // it waits 0.7 s
    const Tow tow{0.1 * metre_per_second, {}, 9.0 * metre, TowProfile::lake};
    const std::vector<Time> times{0.2 * second, 0.2 * second, 0.9 * second, 0.95 * second, 4.0 * second, 9.0 * second};
    const std::vector<FallPoint> points = fall_from_rest(airy, bench_water(), tow, times);
    REQUIRE(points.size() == times.size());
    for (std::size_t i = 0; i < times.size(); ++i) {
        const FallPoint alone = fall_from_rest(airy, bench_water(), tow, 90.0 * metre, times[i]).value();
        CAPTURE(i);
        CHECK(points[i].at == times[i]);
        CHECK(points[i].depth.si() == Approx(alone.depth.si()).margin(1e-9));
        CHECK(points[i].speed.si() == Approx(alone.speed.si()).margin(1e-9));
        CHECK(points[i].drift.si() == Approx(alone.drift.si()).margin(1e-9));
    }
    CHECK(fall_from_rest(ball(50, 990), bench_water(), tow, times).empty());
}

// Source: tests/reference/fall_and_drift.csv, row DRIFT-01: U H / w once it sinks steadily.
TEST_CASE("a ball is carried as far as the water goes while it sinks") {
    for (const auto& row : reference::rows_in("fall_and_drift.csv")) {
        if (row.at("topic") != "DRIFT") continue;
        const auto in = numbers_in(row.at("inputs"));
        const Speed even = in.at(0) * metre_per_second;
        const FallPoint point =
            fall_from_rest(ball(50, 1150), bench_water(), {even, even, 5.0 * metre}, in.at(1) * metre, ever).value();
        CHECK(point.drift.si() == Approx(even.si() * point.at.si()).epsilon(1e-9));
        CHECK(in.at(0) * in.at(1) / in.at(2) == Approx(std::stod(row.at("expected"))).epsilon(1e-4));
    }
}

// By hand: weight falls below the lift of its air e-fold by e-fold; 2.5 times its weight takes ln 2.5 s.
TEST_CASE("a cupful full of air waits at the surface until enough of it has left") {
    FallingBody body = ball(80, 1100);
    body.air = 2.5 * body.under_water / Density::from_si(998.207);
    CHECK(fall_from_rest(body, bench_water(), still(3), 3.0 * metre, 0.9 * second)->depth == Length{});
    const FallPoint soon =
        fall_from_rest(body, bench_water(), still(3), 3.0 * metre, (std::log(2.5) + 0.05) * second).value();
    CHECK(soon.depth > Length{});
    CHECK(soon.depth < 1.0 * millimetre);
}

TEST_CASE("what is lighter than water without its air floats for good") {
    CHECK_FALSE(fall_from_rest(ball(50, 990), bench_water(), still(3), 3.0 * metre, ever));
}

TEST_CASE("air only ever delays, and a heavier ball is never later") {
    CHECK(rc::check([] {
        const double size = *rc::gen::inRange(20, 120), density = *rc::gen::inRange(1020, 1600);
        FallingBody body = ball(size, density);
        const auto lands = [](const FallingBody& b) {
            return fall_from_rest(b, bench_water(), still(3), 3.0 * metre, ever)->at.si();
        };
        const double plain = lands(body);
        RC_ASSERT(lands(ball(size, density + 50)) < plain);
        body.air = (*rc::gen::inRange(1, 30)) * 0.01 * body.volume;
        RC_ASSERT(lands(body) > plain);
    }));
}
