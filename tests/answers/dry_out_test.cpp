#include "answers/mix/dry_out.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

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

// By hand: 0.12 m2 at Carrier's rate for an hour; the lower end is still air's.
TEST_CASE("an open tub loses its face times the rate, a band for wind and still air") {
    const DryAnswer answer = dried(tub());
    const double rate =
        carrier_evaporation(Temperature::from_celsius(18), Temperature::from_celsius(18), 0.6, 2 * metre_per_second)
            .si();
    CHECK(answer.loss_per_hour.high.in(gram) == Approx(3600e3 * rate * 0.12));
    CHECK(answer.loss_per_hour.low.in(gram) == Approx(still_air_share * 3600e3 * rate * 0.12));
    CHECK(answer.to_spray.high.in(gram) == Approx(5 * answer.loss_per_hour.high.in(gram)));
}

TEST_CASE("what is to be sprayed brings the wetness back") {
    CHECK(rc::check([] {
        DryRequest request = tub();
        request.hours = *rc::gen::inRange(1, 20) * 0.5 * hour;
        request.dry_mass = *rc::gen::inRange(500, 5000) * gram;
        request.feel = *rc::gen::element<std::string>("crumbly", "firm", "soft");
        const DryAnswer answer = dried(request);
        const WaterMarks marks = water_need(numbers_of(resolve(draft::fishmeal_mix(), draft::shelf())).solids).marks;
        const double left =
            added_water_ratio(marks, answer.wetness_after_high) + answer.to_spray.high / request.dry_mass;
        RC_ASSERT(std::abs(left - added_water_ratio(marks, answer.wetness)) < 1e-9);
        RC_ASSERT(answer.wetness_after_high <= answer.wetness_after_low);
    }));
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
    CHECK(dried(request).loss_per_hour.high > 1.3 * usual);
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
