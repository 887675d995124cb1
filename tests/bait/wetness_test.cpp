#include "bait/wetness.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

WaterMarks drawn_marks() {
    const double absorption = *rc::gen::inRange(1, 2000) / 1000.0;
    return {absorption, absorption + *rc::gen::inRange(1, 2000) / 1000.0};
}

}  // namespace

TEST_CASE("the added water is none at 0, A at 1 and B at 2, and runs straight between and beyond") {
    const WaterMarks marks{0.55, 0.93};
    CHECK(added_water_ratio(marks, 0.0) == 0.0);
    CHECK(added_water_ratio(marks, 0.5) == Approx(0.275).epsilon(1e-15));
    CHECK(added_water_ratio(marks, 1.0) == 0.55);
    CHECK(added_water_ratio(marks, 1.5) == Approx(0.74).epsilon(1e-15));
    CHECK(added_water_ratio(marks, 2.0) == Approx(0.93).epsilon(1e-15));
    CHECK(added_water_ratio(marks, 3.0) == Approx(1.31).epsilon(1e-15));
}

TEST_CASE("wetting to a wetness and asking the wetness gives it back") {
    CHECK(rc::check([] {
        const WaterMarks marks = drawn_marks();
        const double h = *rc::gen::inRange(0, 3001) / 1000.0;
        RC_ASSERT(std::abs(wetness_at(marks, added_water_ratio(marks, h)) - h) < 1e-11);
    }));
}

TEST_CASE("more water is always wetter") {
    CHECK(rc::check([] {
        const WaterMarks marks = drawn_marks();
        const double some = *rc::gen::inRange(0, 4000) / 1000.0, more = *rc::gen::inRange(1, 1000) / 1000.0;
        RC_ASSERT(wetness_at(marks, some + more) > wetness_at(marks, some));
    }));
}

// Source: tests/reference/consistency_index.csv. With A in the place of the plastic and B of the liquid limit the
// consistency index Ic = (wL - w)/(wL - wP) is 2 - h: each published class limit lies at its own wetness. The same
// equation on both sides: a check of coding.
TEST_CASE("the published limits of the consistency index lie where our scale turned round has them") {
    const WaterMarks limits{0.25, 0.65};
    int tested = 0;
    for (const auto& row : reference::rows_in("consistency_index.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const std::string bounds = row.at("inputs").substr(row.at("inputs").rfind(' '));
        for (const double index : reference::numbers_in(bounds)) {
            const double water = limits.slump - index * (limits.slump - limits.absorption);
            CHECK(wetness_at(limits, water) == Approx(2 - index).epsilon(1e-12));
            ++tested;
        }
    }
    CHECK(tested == 10);
}

TEST_CASE("what takes up no water holds from the first drop and is soup soon after") {
    const WaterMarks salt{0.0, 0.05};
    CHECK(wetness_at(salt, 0.0) == 1.0);
    CHECK(wetness_at(salt, 0.05) == 2.0);
    CHECK(added_water_ratio(salt, 0.7) == 0.0);
    const WaterMarks nothing{0.0, 0.0};
    CHECK(wetness_at(nothing, 0.0) == 1.0);
    CHECK(wetness_at(nothing, 0.1) == std::numeric_limits<double>::infinity());
}

// By hand: A 0.5 at 10 % is 0.6 g of water on 0.9 g of dry matter; at 20 % it is 0.6 x 8/9 - 0.2 = 0.3333 g added.
// B 0.9 is 1.0 x 8/9 - 0.2 = 0.6889 g.
TEST_CASE("both marks move with the moisture of the bag") {
    const WaterMarks moved = marks_at_moisture({0.5, 0.9}, 0.10, 0.20);
    CHECK(moved.absorption == Approx(1.0 / 3).epsilon(1e-14));
    CHECK(moved.slump == Approx(8.0 / 9 - 0.2).epsilon(1e-14));
}
