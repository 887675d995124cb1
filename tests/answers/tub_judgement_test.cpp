#include "answers/mix/tub_judgement.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "answers/asking.h"
#include "answers/mix/right_a_mix.h"

using namespace baitwright;

namespace {

MixAnswer mix_with(const Recipe& recipe, double water_ml, const std::string& feel) {
    MixRequest request = draft::request_for(DryMass{1.0 * kilogram}, feel);
    request.already_added = water_ml * millilitre;
    return draft::scaled(recipe, request);
}

TubAnswer tub_with(const Recipe& recipe, double water_ml, const std::string& feel) {
    TubRequest request;
    request.dry_mass = 1.0 * kilogram;
    request.water = WaterPoured{water_ml * millilitre};
    request.feel = feel;
    return right_a_mix(draft::shelf(), recipe, request);
}

}  // namespace

TEST_CASE("a mix with water in it and a tub are judged alike, whatever is in and whatever is wanted") {
    CHECK(rc::check([] {
        const Recipe recipe = *rc::gen::element(draft::fishmeal_mix(), draft::crumb_mix(), draft::leam_mix());
        const std::string feel = *rc::gen::element<std::string>("dusty", "crumbly", "firm", "tacky", "soft", "slop");
        const double water = *rc::gen::inRange(1, 2000);
        const MixAnswer mix = mix_with(recipe, water, feel);
        const TubAnswer tub = tub_with(recipe, water, feel);
        RC_ASSERT(std::abs((mix.water_to_add - tub.water_to_add).in(gram)) < 1e-6);
        RC_ASSERT(std::abs((mix.dry_to_add - tub.dry_to_add).in(gram)) < 1e-6);
    }));
}

TEST_CASE("inside the band of the feel that is wanted nothing is asked for") {
    // Firm runs from 1.07 to 1.30; its aim is 1.20. Water in proportion to the wetness above "just holds" and below.
    const double aim = draft::kilo(draft::fishmeal_mix(), "firm").water_to_add.in(gram);
    for (const double water : {aim - 40, aim - 1, aim + 1, aim + 25}) {
        CAPTURE(water);
        const TubAnswer tub = tub_with(draft::fishmeal_mix(), water, "firm");
        CHECK(tub.feel_settled == "firm");
        CHECK(tub.water_to_add == Mass{});
        CHECK(tub.dry_to_add == Mass{});
        const MixAnswer mix = mix_with(draft::fishmeal_mix(), water, "firm");
        CHECK(mix.right_as_it_stands);
        CHECK_FALSE(draft::warns(mix, "too-wet"));
        CHECK(mix.wetness_in_tub == Approx(double(tub.wetness_settled)));
    }
}

TEST_CASE("a spoonful of water does not make a tub right for the driest feel, nor a bath for the wettest") {
    for (const double water : {1.0, 50.0, 100.0}) {
        CAPTURE(water);
        CHECK(tub_with(draft::crumb_mix(), water, "dusty").water_to_add > 50.0 * gram);
        CHECK_FALSE(mix_with(draft::crumb_mix(), water, "dusty").right_as_it_stands);
    }
    const double aim = draft::kilo(draft::crumb_mix(), "dusty").water_to_add.in(gram);
    CHECK(tub_with(draft::crumb_mix(), 0.95 * aim, "dusty").water_to_add == Mass{});
    const double slop = draft::kilo(draft::crumb_mix(), "slop").water_to_add.in(gram);
    CHECK(tub_with(draft::crumb_mix(), 1.02 * slop, "slop").dry_to_add == Mass{});
    CHECK(tub_with(draft::crumb_mix(), 1.35 * slop, "slop").dry_to_add > Mass{});
}

TEST_CASE("outside the band the tub is brought to the feel's aim") {
    CHECK(tub_with(draft::fishmeal_mix(), 400, "firm").water_to_add > Mass{});
    CHECK(tub_with(draft::fishmeal_mix(), 900, "firm").dry_to_add > Mass{});
}

TEST_CASE("a wetness asked for by its number is no band, but a spoonful of water is still nothing") {
    MixRequest request = draft::request_for(DryMass{1.0 * kilogram});
    request.wetness = 1.2;
    const double aim = draft::scaled(draft::fishmeal_mix(), request).water_to_add.in(gram);
    request.already_added = (aim - 30) * millilitre;
    CHECK(draft::scaled(draft::fishmeal_mix(), request).water_to_add.in(gram) == Approx(30));
    request.already_added = (aim - 1) * millilitre;
    CHECK(draft::scaled(draft::fishmeal_mix(), request).water_to_add == Mass{});
}
