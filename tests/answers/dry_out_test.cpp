#include "answers/mix/dry_out.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "bait/draft_shelf.h"
#include "bait/resolve_mix.h"
#include "bait/wetted_mix.h"
#include "physics/evaporation.h"
#include "quantities/fault.h"

using namespace baitwright;

namespace {

DryRequest tub() {
    DryRequest request;
    request.face = (40.0 * centimetre) * (30.0 * centimetre);
    request.hours = 5.0 * hour;
    return request;
}

DryAnswer dried(const DryRequest& request) {
    return dry_out(draft::shelf(), draft::fishmeal_mix(), request);
}

}  // namespace

// By hand: 0.12 m2 at the rate of a wet face for an hour; the lower end is a sheltered one's.
TEST_CASE("an open tub loses its face times the rate, a band for wind and still air") {
    const DryAnswer answer = dried(tub());
    Weather weather{Temperature::from_celsius(18), 0.6, 2 * metre_per_second, {}, 1};
    CHECK(answer.loss_per_hour.high.in(gram) == Approx(3600e3 * wet_face_loss(weather).si() * 0.12));
    weather.sheltered_to = still_air_share;
    CHECK(answer.loss_per_hour.low.in(gram) == Approx(3600e3 * wet_face_loss(weather).si() * 0.12));
    CHECK(answer.to_spray.high.in(gram) == Approx(5 * answer.loss_per_hour.high.in(gram)));
}

// By SciPy's brentq on the ASHRAE equation: in air of 18 degC at 60 % a wet bulb is 13.41 degC; its vapour 1539 Pa, the
// air's 1239; (0.089 + 0.0782 x 2) x 300 W/m2 over 2469 kJ/kg are 0.1074 kg/m2 h. A face as warm as the air: 0.297.
TEST_CASE("in the shade the tub is as cool as a wet bulb and loses by that") {
    CHECK(dried(tub()).loss_per_hour.high.in(gram) == Approx(0.12 * 107.4).epsilon(0.01));
}

// The heat of the sun goes off as vapour where the air is too damp to take it up otherwise: wind cools the face.
TEST_CASE("in the sun and damp air the band runs from less to more, though still air takes more than moving") {
    DryRequest request = tub();
    request.in_sun = true;
    request.humidity = 1.0;
    request.wind = 10 * metre_per_second;
    const DryAnswer answer = dried(request);
    CHECK(answer.loss_per_hour.low > Mass{});
    CHECK(answer.loss_per_hour.low < answer.loss_per_hour.high);
    CHECK(answer.lost.low <= answer.lost.high);
}

// Common sense of the bank, no source: a tub of 40 x 30 cm, 30 degC, 40 % humidity, 3 m/s, four hours in the sun: some
// 150 to 300 ml are lost, not half a litre.
TEST_CASE("four hours in the sun cost a tub a cupful, not half of its water") {
    DryRequest request = tub();
    request.hours = 4.0 * hour;
    request.air = Temperature::from_celsius(30);
    request.humidity = 0.4;
    request.wind = 3 * metre_per_second;
    request.in_sun = true;
    const DryAnswer answer = dried(request);
    CHECK(answer.lost.low.in(gram) > 150);
    CHECK(answer.lost.high.in(gram) < 300);
    CHECK(answer.to_spray.low.in(gram) > 150);
    CHECK(answer.to_spray.high.in(gram) < 300);
    CHECK(answer.lost.high < answer.to_spray.high);  // a crust holds it back
}

TEST_CASE("what is lost is what the wetness fell by") {
    CHECK(rc::check([] {
        DryRequest request = tub();
        request.hours = *rc::gen::inRange(1, 20) * 0.5 * hour;
        request.dry_mass = *rc::gen::inRange(500, 5000) * gram;
        request.in_sun = *rc::gen::arbitrary<bool>();
        request.feel = *rc::gen::element<std::string>("crumbly", "firm", "soft");
        const DryAnswer answer = dried(request);
        const WaterMarks marks = water_need(numbers_of(resolve(draft::fishmeal_mix(), draft::shelf())).solids).marks;
        const double left = added_water_ratio(marks, answer.wetness_after_high) + answer.lost.high / request.dry_mass;
        RC_ASSERT(std::abs(left - added_water_ratio(marks, answer.wetness)) < 1e-9);
        RC_ASSERT(answer.wetness_after_low >= answer.wetness_after_high);
        RC_ASSERT(answer.lost.high.si() <= answer.to_spray.high.si() + 1e-12);
    }));
}

// By hand: crumbly falls from 0.95 to 0.82 at a rate that falls with it, so by ln(0.95/0.82), not by 0.13/0.95.
TEST_CASE("a mix has left its feel when what is left has come to the band's edge") {
    DryRequest request = tub();
    request.in_sun = true;
    request.feel = "crumbly";  // from 0.95 down to 0.82: below the critical wetness all the way
    const DryAnswer answer = dried(request);
    REQUIRE(answer.until_it_leaves.low);
    request.hours = *answer.until_it_leaves.low;
    CHECK(dried(request).wetness_after_high == Approx(0.82));
    const WaterMarks marks = water_need(numbers_of(resolve(draft::fishmeal_mix(), draft::shelf())).solids).marks;
    const double by_first_rate = 0.13 * marks.absorption * 1000 / answer.loss_per_hour.high.in(gram);  // hours
    CHECK(answer.until_it_leaves.low->in(hour) == Approx(by_first_rate * std::log(0.95 / 0.82) / (0.13 / 0.95)));
}

TEST_CASE("a lid, damp air and a calm each save water, sun costs it") {
    const Mass usual = dried(tub()).loss_per_hour.high;
    DryRequest request = tub();
    request.covered = true;
    CHECK(dried(request).loss_per_hour.high < 0.2 * usual);
    request = tub();
    request.humidity = 0.9;
    CHECK(dried(request).loss_per_hour.high < usual);
    request = tub();
    request.wind = {};
    CHECK(dried(request).loss_per_hour.high < usual);
    request = tub();
    request.in_sun = true;
    CHECK(dried(request).loss_per_hour.high > 2 * usual);
}

TEST_CASE("a mix leaves its feel sooner the faster it dries, and a covered one may never") {
    const DryAnswer answer = dried(tub());
    REQUIRE(answer.until_it_leaves.low);
    REQUIRE(answer.until_it_leaves.high);
    CHECK(*answer.until_it_leaves.low < *answer.until_it_leaves.high);
    DryRequest request = tub();
    request.covered = true;
    request.humidity = 0.95;
    CHECK_FALSE(dried(request).until_it_leaves.low);
}

TEST_CASE("tubs, air and times that cannot be are refused") {
    const auto refused = [](auto change) {
        DryRequest request = tub();
        change(request);
        try {
            dried(request);
        } catch (const UsageError&) {
            return true;
        }
        return false;
    };
    CHECK(refused([](DryRequest& r) { r.face = {}; }));
    CHECK(refused([](DryRequest& r) { r.hours = 100.0 * hour; }));
    CHECK(refused([](DryRequest& r) { r.humidity = 1.2; }));
    CHECK(refused([](DryRequest& r) { r.wind = 40 * metre_per_second; }));
    CHECK(refused([](DryRequest& r) { r.air = Temperature::from_celsius(60); }));
    CHECK(refused([](DryRequest& r) { r.dry_mass = {}; }));
    CHECK(refused([](DryRequest& r) { r.feel = "stodgy"; }));
}
