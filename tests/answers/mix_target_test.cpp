#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "answers/asking.h"
#include "answers/shared/mix_amount.h"
#include "bait/random_mixes.h"
#include "quantities/fault_of.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using draft::request_for;
using draft::scaled;

namespace {

Recipe by_mass() {
    Recipe recipe;
    recipe.name = "by mass";
    recipe.parts = {{"brown crumb", 400.0 * gram}, {"maize meal", 200.0 * gram}, {"molasses", 60.0 * gram}};
    return recipe;
}

std::string refusal(const Recipe& recipe, const MixRequest& request) {
    return fault_of([&] { scaled(recipe, request); }).code;
}

std::string refusal(const MixRequest& request) {
    return refusal(draft::fishmeal_mix(), request);
}

OnHand on_hand(const std::string& of, std::variant<Mass, Volume> amount) {
    return {{{of, amount}}};
}

}  // namespace

TEST_CASE("as written is what the recipe says") {
    const MixAnswer answer = scaled(by_mass(), request_for(AsWritten{}));
    CHECK(answer.dry_mass.in(gram) == Approx(600));
    CHECK(answer.parts.at(0).mass.in(gram) == Approx(400));
    REQUIRE(answer.additives.size() == 1);
    CHECK(answer.additives.front().mass.in(gram) == Approx(60));
    CHECK(answer.additives.front().liquid);
    CHECK(answer.additives.front().volume.in(millilitre) == Approx(60 / 1.4));
    CHECK(answer.additives.front().wetting.in(gram) == Approx(60 / 1.4 * 0.8));
}

TEST_CASE("a mix of shares needs a target") {
    CHECK(refusal(request_for(AsWritten{})) == "no-target");
}

TEST_CASE("each target is met") {
    const Recipe mix = draft::fishmeal_mix();
    CHECK(scaled(mix, request_for(WetVolume{3.0 * litre})).wet_volume.in(litre) == Approx(3));
    CHECK(scaled(mix, request_for(WetMass{2.0 * kilogram})).wet_mass.in(kilogram) == Approx(2));
    CHECK(scaled(mix, request_for(DryMass{1.5 * kilogram})).dry_mass.in(kilogram) == Approx(1.5));
    const MixAnswer cups = scaled(mix, request_for(Vessels{4, 250.0 * millilitre, "cup"}, "soft"));
    CHECK(cups.wet_volume.in(millilitre) == Approx(1000));
    CHECK(cups.state == MixState::cupped);
    const MixAnswer balls = scaled(mix, request_for(Balls{12, 55.0 * millimetre}));
    CHECK(balls.wet_volume.in(millilitre) == Approx(12 * 87.11372).epsilon(1e-6));
    CHECK(balls.state == MixState::squeezed);
}

TEST_CASE("scaling there and back gives the same mix") {
    CHECK(rc::check([] {
        const Recipe recipe = draft::drawn_recipe(draft::Extras::all);
        MixRequest request = request_for(DryMass{draft::drawn(1, 9000, 1) * gram});
        request.wetness = draft::drawn(5, 160, 0.01);
        const MixAnswer there = scaled(recipe, request);
        for (const MixTarget& target : {MixTarget{WetVolume{there.wet_volume}}, MixTarget{WetMass{there.wet_mass}}}) {
            request.target = target;
            const MixAnswer back = scaled(recipe, request);
            RC_ASSERT(std::abs(back.dry_mass / there.dry_mass - 1) < 1e-12);
            RC_ASSERT(std::abs((back.water_to_add - there.water_to_add) / there.dry_mass) < 1e-12);
            for (std::size_t i = 0; i < there.parts.size(); ++i)
                RC_ASSERT(std::abs(back.parts[i].mass / there.parts[i].mass - 1) < 1e-12);
            for (std::size_t i = 0; i < there.additives.size(); ++i)
                RC_ASSERT(std::abs((back.additives[i].mass - there.additives[i].mass) / there.dry_mass) < 1e-12);
        }
    }));
}

TEST_CASE("twice the mix is twice of everything") {
    CHECK(rc::check([] {
        const Recipe recipe = draft::drawn_recipe(draft::Extras::all);
        const MixAnswer once = scaled(recipe, request_for(DryMass{1.0 * kilogram}));
        const MixAnswer twice = scaled(recipe, request_for(DryMass{2.0 * kilogram}));
        RC_ASSERT(std::abs(twice.wet_mass / once.wet_mass - 2) < 1e-12);
        RC_ASSERT(std::abs(twice.wet_volume / once.wet_volume - 2) < 1e-12);
        RC_ASSERT(std::abs(twice.dry_volume / once.dry_volume - 2) < 1e-12);
        RC_ASSERT(std::abs(twice.free_offerings - 2 * once.free_offerings) <= 1e-9 * once.free_offerings);
        RC_ASSERT(std::abs(twice.saturation - once.saturation) < 1e-12);
        RC_ASSERT(twice.rest == once.rest);
    }));
}

TEST_CASE("the parts sum to the dry mass, and the tub holds all that was weighed and poured") {
    CHECK(rc::check([] {
        const Recipe recipe = draft::drawn_recipe(draft::Extras::all);
        MixRequest request = request_for(DryMass{1.0 * kilogram});
        request.already_added = draft::drawn(0, 300, 1) * millilitre;
        const MixAnswer answer = scaled(recipe, request);
        double dry = 0, wet = answer.water_to_add.in(gram) + answer.water_already_in.in(gram);
        for (const PartAnswer& part : answer.parts) {
            dry += part.mass.in(gram);
            wet += part.mass.in(gram) * (part.prepare == Preparation::soaked ? 1.43 : 1.0);
        }
        for (const AdditiveAnswer& additive : answer.additives) wet += additive.mass.in(gram);
        RC_ASSERT(std::abs(dry - 1000) < 1e-8);
        RC_ASSERT(std::abs(wet - answer.wet_mass.in(gram)) < 1e-8);
    }));
}

TEST_CASE("a target is for each person, with the spare on top") {
    MixRequest request = request_for(WetVolume{3.0 * litre});
    request.people = 4;
    request.spare = 0.1;
    CHECK(scaled(draft::fishmeal_mix(), request).wet_volume.in(litre) == Approx(13.2));
    request.target = Balls{5, 55.0 * millimetre};
    const MixAnswer balls = scaled(draft::fishmeal_mix(), request);
    CHECK(balls.wet_volume.in(millilitre) == Approx(22 * 87.11372).epsilon(1e-6));
    REQUIRE(balls.portions.has_value());
    CHECK(balls.portions->count == 20);
}

TEST_CASE("nobody, too many, and spare out of reason are refused") {
    MixRequest request = request_for(DryMass{1.0 * kilogram});
    for (const int people : {0, -1, 1001}) {
        request.people = people;
        CHECK(refusal(request) == "out-of-range");
    }
    request.people = 1;
    for (const double spare : {-0.1, 5.1, std::numeric_limits<double>::quiet_NaN()}) {
        request.spare = spare;
        CHECK(refusal(request) == "out-of-range");
    }
}

TEST_CASE("an amount of nothing, below it, without end or above ten tonnes is refused") {
    for (const double kilograms :
         {0.0, -1.0, 10001.0, std::numeric_limits<double>::infinity(), std::numeric_limits<double>::quiet_NaN()}) {
        CAPTURE(kilograms);
        CHECK(refusal(request_for(DryMass{kilograms * kilogram})) == "out-of-range");
    }
    CHECK(refusal(request_for(Balls{0, 55.0 * millimetre})) == "out-of-range");
    CHECK(refusal(request_for(Balls{3, Length{}})) == "out-of-range");
    CHECK(refusal(request_for(Vessels{-2, 250.0 * millilitre, "cup"})) == "out-of-range");
}

// By hand: 400 g of fishmeal is 0.4 of the mix: 1 kg. 0.42 l of crumb at 420 g/l is 176.4 g, 0.3 of it: 588 g.
TEST_CASE("the most that is on hand is set by what runs out first") {
    const MixAnswer meal = scaled(draft::fishmeal_mix(), request_for(on_hand("Fishmeal, brown", 400.0 * gram)));
    CHECK(meal.dry_mass.in(gram) == Approx(1000));
    CHECK(meal.limited_by == "fishmeal, brown");
    const OnHand both{{{"fishmeal, brown", 400.0 * gram}, {"brown crumb", 420.0 * millilitre}}};
    const MixAnswer crumb = scaled(draft::fishmeal_mix(), request_for(both));
    CHECK(crumb.dry_mass.in(gram) == Approx(588));
    CHECK(crumb.limited_by == "brown crumb");
}

TEST_CASE("a liquid part on hand counts by its own density") {
    const MixAnswer answer = scaled(by_mass(), request_for(on_hand("molasses", 100.0 * millilitre)));
    CHECK(answer.dry_mass.in(gram) == Approx(1400));
    CHECK(answer.limited_by == "molasses");
}

TEST_CASE("what is on hand is there once, for however many people") {
    MixRequest request = request_for(on_hand("brown crumb", 300.0 * gram));
    request.people = 3;
    CHECK(scaled(draft::fishmeal_mix(), request).dry_mass.in(gram) == Approx(1000));
    request.spare = 0.5;
    CHECK(refusal(request) == "unfit-flag");
}

TEST_CASE("what is named twice on hand is there twice, and a speck is too little to weigh") {
    OnHand twice;
    twice.items = {{"brown crumb", 100.0 * gram}, {"brown crumb", 200.0 * gram}};
    CHECK(scaled(draft::fishmeal_mix(), request_for(twice)).dry_mass.in(gram) == Approx(1000));
    CHECK(refusal(request_for(DryMass{0.001 * gram})) == "out-of-range");
}

TEST_CASE("on hand must be in the mix, and must be something") {
    const Fault fault =
        fault_of([] { scaled(draft::fishmeal_mix(), request_for(on_hand("brwn crumb", 1.0 * kilogram))); });
    CHECK(fault.code == "not-in-mix");
    CHECK_THAT(fault.hint, Catch::Contains("brown crumb"));
    CHECK(refusal(request_for(on_hand("brown crumb", 0.0 * gram))) == "out-of-range");
}

// Source: tests/reference/ball_count.csv, row by row; the same equation on both sides: a check of coding.
TEST_CASE("a ball's volume and the balls of a litre are those of a sphere") {
    for (const auto& row : reference::rows_in("ball_count.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const Length diameter = reference::numbers_in(row.at("inputs")).front() * millimetre;
        const auto expected = reference::numbers_in(row.at("expected"));
        CHECK(ball_volume(diameter).in(millilitre) == Approx(expected.at(0)).epsilon(0).margin(1e-3));
        MixRequest litre_of_balls = request_for(WetVolume{1.0 * litre}, "firm");
        litre_of_balls.state = MixState::squeezed;
        const MixAnswer single = scaled(draft::fishmeal_mix(), request_for(Balls{1, diameter}, "firm"));
        CHECK(scaled(draft::fishmeal_mix(), litre_of_balls).dry_mass / single.dry_mass ==
              Approx(expected.at(1)).epsilon(0).margin(1e-3));
    }
}

// Section 3.4 of the method: buckets of at most 5 kg wet.
TEST_CASE("a mix above five kilos wet is split evenly into tubs") {
    const auto tubs = [](double kilograms) {
        return scaled(draft::fishmeal_mix(), request_for(WetMass{kilograms * kilogram})).tubs;
    };
    CHECK(tubs(4.9).count == 1);
    CHECK(tubs(5.0).count == 1);
    CHECK(tubs(5.1).count == 2);
    CHECK(tubs(12.0).count == 3);
    CHECK(tubs(12.0).wet_each.in(kilogram) == Approx(4));
    CHECK((tubs(12.0).dry_each + tubs(12.0).water_each).in(kilogram) == Approx(4));
}

TEST_CASE("a level cup holds more than one riddled in loose, and neither a feeder nor slop is told so") {
    const auto of = [](const char* called, const char* feel) {
        return *scaled(draft::fishmeal_mix(), request_for(Vessels{2, 250.0 * millilitre, called}, feel)).portions;
    };
    const PortionsAnswer firm = of("cup", "firm");
    REQUIRE(firm.riddled_each);
    // The same mix asked for riddled: what 250 ml of it weigh.
    MixRequest loose = request_for(WetVolume{250.0 * millilitre}, "firm");
    CHECK(firm.riddled_each->in(gram) == Approx(scaled(draft::fishmeal_mix(), loose).wet_mass.in(gram)).epsilon(1e-9));
    CHECK(*firm.riddled_each < 0.85 * firm.mass_each);
    CHECK_FALSE(of("feeder", "firm").riddled_each);
    CHECK_FALSE(of("cup", "slop").riddled_each);
}

TEST_CASE("portions weigh what the mix does, and there are none without cups or balls") {
    const MixAnswer cups = scaled(draft::fishmeal_mix(), request_for(Vessels{4, 250.0 * millilitre, "cup"}, "soft"));
    REQUIRE(cups.portions.has_value());
    CHECK(cups.portions->count == 4);
    CHECK(cups.portions->called == "cup");
    CHECK((4 * cups.portions->mass_each).in(gram) == Approx(cups.wet_mass.in(gram)));
    CHECK_FALSE(scaled(draft::fishmeal_mix(), request_for(DryMass{1.0 * kilogram})).portions.has_value());
}
