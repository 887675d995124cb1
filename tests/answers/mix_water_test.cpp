#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "answers/asking.h"
#include "bait/random_mixes.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using draft::request_for;
using draft::scaled;
using draft::warns;

namespace {

MixRequest a_kilo_of_it() {
    return request_for(DryMass{1.0 * kilogram});
}

MixAnswer with_water_in(const Recipe& recipe, Mass dry, double millilitres, const char* feel = "firm") {
    MixRequest request = request_for(DryMass{dry}, feel);
    request.already_added = millilitres * millilitre;
    return scaled(recipe, request);
}

Fault refused_fault(const MixRequest& request) {
    return fault_of([&] { scaled(draft::fishmeal_mix(), request); });
}

}  // namespace

TEST_CASE("a mix is wetted to the feel asked for, else to its own") {
    Recipe soft = draft::fishmeal_mix();
    soft.feel = "soft";
    CHECK(scaled(soft, a_kilo_of_it()).feel == "soft");
    CHECK(scaled(soft, request_for(DryMass{1.0 * kilogram}, "TACKY ")).feel == "tacky");
    CHECK(scaled(draft::fishmeal_mix(), a_kilo_of_it()).feel == "firm");
}

TEST_CASE("a wetness is met as it is and named by its band") {
    MixRequest request = a_kilo_of_it();
    request.wetness = 1.35;
    const MixAnswer answer = scaled(draft::fishmeal_mix(), request);
    CHECK(answer.feel == "tacky");
    CHECK(answer.wetness == 1.35);
    CHECK(answer.water_to_add.in(gram) == Approx(547 + 0.35 * 387));
}

TEST_CASE("two feels, a feel that is not known and a wetness off the scale are refused") {
    MixRequest request = request_for(DryMass{1.0 * kilogram}, "firm");
    request.wetness = 1.2;
    CHECK(refused_fault(request).code == "two-feels");
    const Fault unknown = refused_fault(request_for(DryMass{1.0 * kilogram}, "frm"));
    CHECK(unknown.code == "unknown-feel");
    CHECK_THAT(unknown.hint, Catch::Contains("firm"));
    CHECK_THAT(refused_fault(request_for(DryMass{1.0 * kilogram}, "zzzzzz")).hint, Catch::Contains("dusty, crumbly"));
    for (const double wetness : {0.0, -1.0, 3.01, std::nan("")}) {
        MixRequest off = a_kilo_of_it();
        off.wetness = wetness;
        CHECK(refused_fault(off).code == "out-of-range");
    }
}

TEST_CASE("a state that the wetness does not allow is refused with those it does") {
    MixRequest dusty_ball = request_for(Balls{12, 55.0 * millimetre}, "dusty");
    const Fault fault = refused_fault(dusty_ball);
    CHECK(fault.code == "unfit-state");
    CHECK_THAT(fault.message, Catch::Contains("dusty") && Catch::Contains("too dry"));
    CHECK_THAT(fault.hint, Catch::Contains("riddled, cupped"));
    MixRequest soft_riddle = request_for(DryMass{1.0 * kilogram}, "soft");
    soft_riddle.state = MixState::riddled;
    CHECK(refused_fault(soft_riddle).code == "unfit-state");
    CHECK_THAT(refused_fault(soft_riddle).message, Catch::Contains("too wet"));
    CHECK_THAT(refused_fault(soft_riddle).hint, Catch::Contains("it can be cupped;"));
    CHECK(refused_fault(request_for(Balls{3, 55.0 * millimetre}, "slop")).code == "unfit-state");
}

TEST_CASE("the target's own state cannot be another") {
    MixRequest balls = request_for(Balls{3, 55.0 * millimetre}, "firm");
    balls.state = MixState::riddled;
    CHECK(refused_fault(balls).code == "two-states");
    balls.state = MixState::squeezed;
    CHECK(refused_fault(balls).code.empty());
}

TEST_CASE("a mix is riddled by default, cupped once it is too wet for that") {
    CHECK(draft::kilo(draft::fishmeal_mix(), "tacky").state == MixState::riddled);
    CHECK(draft::kilo(draft::fishmeal_mix(), "soft").state == MixState::cupped);
}

// By hand: 624.4 g in all; 300 are in.
TEST_CASE("water that is in the tub already is not poured again") {
    const MixAnswer answer = with_water_in(draft::fishmeal_mix(), 1.0 * kilogram, 300);
    CHECK(answer.water_already_in.in(gram) == Approx(300));
    CHECK(answer.water_to_add.in(gram) == Approx(324.4));
    CHECK(answer.wet_mass.in(gram) == Approx(1624.4));
    CHECK(answer.wet_volume.in(millilitre) ==
          Approx(draft::kilo(draft::fishmeal_mix(), "firm").wet_volume.in(millilitre)));
    CHECK_FALSE(warns(answer, "too-wet"));
    CHECK(answer.dry_to_add == Mass{});
}

// By hand: 800 g in a kilo that wants 624.4 g: 800/0.6244 - 1000 = 281.23 g of dry mix.
TEST_CASE("a tub that is too wet takes dry mix and no water, and the answer is no") {
    const MixAnswer answer = with_water_in(draft::fishmeal_mix(), 1.0 * kilogram, 800);
    CHECK(answer.water_to_add == Mass{});
    CHECK(answer.kitchen_water == Mass{});
    CHECK(answer.dry_to_add.in(gram) == Approx(281.23).epsilon(1e-5));
    CHECK(answer.wet_mass.in(gram) == Approx(1800));
    REQUIRE(warns(answer, "too-wet"));
    CHECK(answer.warnings.front().answer_is_no);
}

TEST_CASE("adding the dry mix that was told reaches the feel") {
    CHECK(rc::check([] {
        const Recipe recipe = draft::drawn_recipe(draft::Extras::none);
        for (const Part& part : recipe.parts)
            RC_PRE(draft::shelf().ingredient(part.of).kind != IngredientKind::particle);
        const double water = draft::drawn(1500, 4000, 1);
        const MixAnswer wet = with_water_in(recipe, 1.0 * kilogram, water);
        RC_PRE(warns(wet, "too-wet"));
        const MixAnswer mended = with_water_in(recipe, 1.0 * kilogram + wet.dry_to_add, water);
        RC_ASSERT(std::abs(mended.water_to_add / mended.dry_mass) < 1e-9);
        RC_ASSERT(!warns(mended, "too-wet"));
    }));
}

// Of the leam mix 15 % is live feed that takes none: a kilo more of the same mix takes up only 0.85 as much.
TEST_CASE("adding the dry mix that was told reaches the feel with live feed in it too") {
    const MixAnswer wet = with_water_in(draft::leam_mix(), 1.0 * kilogram, 300);
    REQUIRE(warns(wet, "too-wet"));
    // Told without the live feed, which takes no water: the whole mix that brings as much of the rest.
    const double takes_water = 0.85;
    const MixAnswer mended = with_water_in(draft::leam_mix(), 1.0 * kilogram + wet.dry_to_add / takes_water, 300);
    CHECK(mended.water_to_add.in(gram) == Approx(0).margin(1e-6));
    CHECK_FALSE(warns(mended, "too-wet"));
}

TEST_CASE("where nothing takes water, none is added and it is said") {
    const MixAnswer live = draft::kilo(draft::mix_of("live", {{"maggots", 1}}), "firm");
    CHECK(live.water_to_add == Mass{});
    CHECK(live.rest == Time{});
    CHECK(warns(live, "takes-no-water"));
    CHECK_FALSE(warns(live, "too-wet"));
}

// Nothing in it takes water, so its film is not too much of it, and more of the same would not help.
TEST_CASE("soaked pellets alone are not too wet") {
    Recipe soaked = draft::micro_mix();
    soaked.parts.front().prepare = Preparation::soaked;
    const MixAnswer answer = draft::kilo(soaked, "firm");
    CHECK_FALSE(warns(answer, "takes-no-water"));  // soaking is how they take it
    CHECK_FALSE(warns(answer, "too-wet"));
}

TEST_CASE("cold water makes the rest longer and changes nothing else") {
    MixRequest cold = a_kilo_of_it();
    cold.water_temperature = Temperature::from_celsius(4);
    const MixAnswer slow = scaled(draft::fishmeal_mix(), cold), quick = scaled(draft::fishmeal_mix(), a_kilo_of_it());
    CHECK(slow.rest > quick.rest);
    CHECK(slow.water_to_add == quick.water_to_add);
    CHECK(slow.wet_volume == quick.wet_volume);
}

TEST_CASE("water at or under the ice and water that scalds are refused") {
    for (const double celsius : {-0.1, 60.1}) {
        MixRequest request = a_kilo_of_it();
        request.water_temperature = Temperature::from_celsius(celsius);
        CHECK(fault_of([&] { answer_mix(draft::shelf(), draft::fishmeal_mix(), request); }).code == "out-of-range");
    }
    MixRequest request = a_kilo_of_it();
    request.water_temperature = Temperature::from_celsius(0);
    CHECK(fault_of([&] { answer_mix(draft::shelf(), draft::fishmeal_mix(), request); }).code.empty());
}
