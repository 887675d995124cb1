#include "answers/mix/right_a_mix.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "answers/asking.h"
#include "quantities/fault.h"
#include "quantities/fault_of.h"

using namespace baitwright;

namespace {

TubRequest tub(double water_ml, std::optional<std::string> feel = std::nullopt) {
    TubRequest request;
    request.dry_mass = 1.0 * kilogram;
    request.water = WaterPoured{water_ml * millilitre};
    request.feel = std::move(feel);
    return request;
}

TubAnswer fishmeal_with(double water_ml) {
    return right_a_mix(draft::shelf(), draft::fishmeal_mix(), tub(water_ml));
}

}  // namespace

TEST_CASE("wetting to a feel and asking the tub gives the feel back") {
    for (const Recipe& recipe : {draft::fishmeal_mix(), draft::crumb_mix(), draft::leam_mix()})
        for (const Feel& feel : draft::feels()) {
            CAPTURE(recipe.name, feel.name);
            const double water = draft::kilo(recipe, feel.name).water_to_add.in(gram);
            const TubAnswer answer = right_a_mix(draft::shelf(), recipe, tub(water, feel.name));
            CHECK(answer.feel_settled == feel.name);
            CHECK(answer.wetness_settled == Approx(feel.aim).epsilon(1e-9));
            CHECK(answer.water_to_add.in(gram) == Approx(0).margin(1e-6));
            CHECK(answer.dry_to_add.in(gram) == Approx(0).margin(1e-6));
        }
}

// Worked by hand: 624.4 g is firm for a kilo; 824.4 / 0.6244 = 1320.3 g of dry mix want that water.
TEST_CASE("a kilo overshot by 200 ml is mended by about 320 g of the same dry mix") {
    const TubAnswer answer = fishmeal_with(824.4);
    CHECK(answer.dry_to_add.in(gram) == Approx(320.3).epsilon(0).margin(0.1));
    CHECK(answer.water_to_add == Mass{});
    CHECK(answer.feel_settled == "soft");
}

TEST_CASE("what the tub is told to take puts it right") {
    CHECK(rc::check([] {
        const double water = *rc::gen::inRange(0, 2000);
        const TubAnswer answer = fishmeal_with(water);
        RC_ASSERT(answer.water_to_add == Mass{} || answer.dry_to_add == Mass{});
        TubRequest mended = tub(water + answer.water_to_add.in(gram));
        mended.dry_mass = 1.0 * kilogram + answer.dry_to_add;
        const TubAnswer after = right_a_mix(draft::shelf(), draft::fishmeal_mix(), mended);
        // Where nothing is asked for it is right as it stands: inside the band, from crumbly's upper edge to its own.
        if (answer.water_to_add == Mass{} && answer.dry_to_add == Mass{})
            RC_ASSERT(after.feel_settled == "firm");
        else
            RC_ASSERT(std::abs(after.wetness_settled - 1.2) < 1e-9);
    }));
}

TEST_CASE("a tub just wetted feels wetter than it will when it has settled") {
    TubRequest request = tub(600);
    request.since = 2.0 * minute;
    const TubAnswer soon = right_a_mix(draft::shelf(), draft::fishmeal_mix(), request);
    CHECK(soon.wetness_now > soon.wetness_settled + 0.2);
    CHECK(soon.settles_in > 5.0 * minute);
    request.since = 24.0 * hour;
    const TubAnswer late = right_a_mix(draft::shelf(), draft::fishmeal_mix(), request);
    CHECK(late.wetness_now == Approx(late.wetness_settled).epsilon(1e-6));
    CHECK(late.settles_in == Time{});
    CHECK(late.water_to_add.in(gram) == Approx(soon.water_to_add.in(gram)));
}

TEST_CASE("weighing a tub that has dried out tells the water that is left in it") {
    TubRequest request = tub(0);
    request.water = TubWeighs{1524.4 * gram};
    const TubAnswer answer = right_a_mix(draft::shelf(), draft::fishmeal_mix(), request);
    CHECK(answer.water_in.in(gram) == Approx(524.4));
    CHECK(answer.water_to_add.in(gram) == Approx(100.0));
    request.water = TubWeighs{900.0 * gram};
    CHECK_THROWS_AS(right_a_mix(draft::shelf(), draft::fishmeal_mix(), request), Error);
}

TEST_CASE("impossible tubs are refused, soup is said to be soup") {
    TubRequest request = tub(100);
    request.dry_mass = Mass{};
    CHECK_THROWS_AS(right_a_mix(draft::shelf(), draft::fishmeal_mix(), request), Error);
    CHECK_THROWS_AS(fishmeal_with(-1), Error);
    request = tub(100);
    request.since = -1.0 * minute;
    CHECK_THROWS_AS(right_a_mix(draft::shelf(), draft::fishmeal_mix(), request), Error);
    CHECK_THROWS_AS(right_a_mix(draft::shelf(), draft::fishmeal_mix(), tub(100, "sloppy")), Error);
    const TubAnswer soup = fishmeal_with(5000);
    CHECK(soup.wetness_settled == 3.0);
    REQUIRE(soup.warnings.size() == 1);
    CHECK(soup.warnings.front().code == "beyond-scale");
}

TEST_CASE("a mix that takes no water is said to take none") {
    const TubAnswer answer = right_a_mix(draft::shelf(), draft::mix_of("live", {{"maggots", 1}}), tub(100));
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings.front().code == "takes-no-water");
    CHECK(answer.water_to_add == Mass{});
}

TEST_CASE("pellets alone are soaked, so no tub of them is put right by water") {
    CHECK(fault_of([] { right_a_mix(draft::shelf(), draft::micro_mix(), tub(100)); }).code == "soaked-alone");
}
