#include "answers/mix/tub_holds.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "answers/asking.h"
#include "answers/mix/right_a_mix.h"
#include "bait/pellets_alone.h"
#include "bait/random_mixes.h"
#include "bait/resolve_mix.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using draft::request_for;
using draft::scaled;

namespace {

TubRequest tub_with(Mass dry, Mass water, std::string feel) {
    TubRequest request;
    request.dry_mass = dry;
    request.water = WaterPoured{water / (1.0 * gram_per_millilitre)};
    request.feel = std::move(feel);
    return request;
}

TubAnswer asked(const Recipe& recipe, const TubRequest& request) {
    return right_a_mix(draft::shelf(), recipe, request);
}

MixAnswer kilo_in(const Recipe& recipe, const std::string& feel, MixState state, Mass dry = 1.0 * kilogram) {
    MixRequest request = request_for(DryMass{dry}, feel);
    request.state = state;
    return scaled(recipe, request);
}

constexpr std::array states{MixState::riddled, MixState::cupped, MixState::squeezed};

}  // namespace

TEST_CASE("a tub wetted to its feel holds what the mix comes to, in each state that it can be in") {
    for (const Recipe& recipe : {draft::fishmeal_mix(), draft::crumb_mix(), draft::leam_mix()})
        for (const Feel& feel : draft::feels()) {
            CAPTURE(recipe.name, feel.name);
            const MixAnswer kilo = draft::kilo(recipe, feel.name);
            const TubAnswer tub = asked(recipe, tub_with(1.0 * kilogram, kilo.water_to_add, feel.name));
            CHECK(tub.put_right.wet_mass / kilo.wet_mass == Approx(1));
            for (const MixState state : states) {
                REQUIRE(tub.put_right.in(state).has_value() == can_be(state, feel.aim));
                REQUIRE(tub.as_it_stands.in(state).has_value() == can_be(state, feel.aim));
                if (!can_be(state, feel.aim)) continue;
                const Volume mixed = kilo_in(recipe, feel.name, state).wet_volume;
                CHECK(*tub.put_right.in(state) / mixed == Approx(1));
                CHECK(*tub.as_it_stands.in(state) / mixed == Approx(1));
            }
        }
}

TEST_CASE("a tub too dry or too wet is told as it is once it is right, water or dry mix and all") {
    CHECK(rc::check([] {
        const Mass water = draft::drawn(0, 2000, 1) * gram;
        const TubAnswer tub = asked(draft::fishmeal_mix(), tub_with(1.0 * kilogram, water, "firm"));
        const MixAnswer mixed = kilo_in(draft::fishmeal_mix(), "firm", MixState::cupped, tub.dry_mass + tub.dry_to_add);
        if (tub.water_to_add > Mass{} || tub.dry_to_add > Mass{}) {
            RC_ASSERT(std::abs(tub.put_right.wet_mass / mixed.wet_mass - 1) < 1e-9);
            RC_ASSERT(std::abs(*tub.put_right.in(MixState::cupped) / mixed.wet_volume - 1) < 1e-9);
        }
        // What is in it weighs what went in; by hand, for nothing is dosed into this mix.
        RC_ASSERT(std::abs((tub.as_it_stands.wet_mass - water).in(gram)-1000) < 1e-6);
    }));
}

TEST_CASE("what is put right by dry mix keeps the doses that were in it") {
    CHECK(rc::check([] {
        const Recipe recipe = draft::drawn_recipe(draft::Extras::all);
        RC_PRE(!is_pellets_alone(resolve(recipe, draft::shelf())));
        const TubAnswer tub = asked(recipe, tub_with(1.0 * kilogram, draft::drawn(4000, 9000, 1) * gram, "firm"));
        RC_PRE(tub.dry_to_add > Mass{});
        RC_ASSERT(std::abs((tub.put_right.wet_mass - tub.as_it_stands.wet_mass - tub.dry_to_add).in(gram)) < 1e-6);
    }));
}

TEST_CASE("a tub makes as many cups and balls as the mix of the same dry mass, with the same range") {
    for (const bool balls : {false, true}) {
        const MixTarget target =
            balls ? MixTarget(Balls{20, 55.0 * millimetre}) : MixTarget(Vessels{20, 250.0 * millilitre, "cup"});
        const MixRequest request = request_for(target, "firm");
        const MixAnswer mixed = answer_mix(draft::shelf(), draft::fishmeal_mix(), request);
        TubRequest tub = tub_with(mixed.dry_mass, 0.3 * mixed.water_to_add, "firm");
        tub.portions = {balls ? TubPortion(std::get<Balls>(target)) : TubPortion(std::get<Vessels>(target))};
        const TubAnswer answer = asked(draft::fishmeal_mix(), tub);
        REQUIRE(answer.makes.size() == 1);
        const TubMakes& makes = answer.makes.front();
        CHECK(makes.count == 20);
        CHECK(makes.low == static_cast<int>(mixed.doubt->portions->low));
        CHECK(makes.high == static_cast<int>(mixed.doubt->portions->high));
        CHECK(makes.low < 20);
        CHECK(makes.high > 20);
        CHECK(makes.mass_each.in(gram) == Approx(mixed.portions->mass_each.in(gram)));
    }
}

TEST_CASE("a part of a cup is no cup") {
    TubRequest tub = tub_with(1.0 * kilogram, 624.4 * gram, "firm");
    const Volume cupped = *asked(draft::fishmeal_mix(), tub).put_right.in(MixState::cupped);
    tub.portions = {Vessels{1, cupped / 2.99, "cup"}, Vessels{1, 1.01 * cupped, "cup"}};
    const TubAnswer answer = asked(draft::fishmeal_mix(), tub);
    REQUIRE(answer.makes.size() == 2);
    CHECK(answer.makes[0].count == 2);
    CHECK(answer.makes[1].count == 0);
}

TEST_CASE("what the feel does not let be made is refused, and sizes that nobody has") {
    const auto refused = [](TubPortion portion, const std::string& feel) {
        TubRequest tub = tub_with(1.0 * kilogram, 500.0 * gram, feel);
        tub.portions = {std::move(portion)};
        return fault_of([&] { asked(draft::fishmeal_mix(), tub); }).code;
    };
    CHECK(refused(Balls{1, 55.0 * millimetre}, "soft") == "unfit-state");
    CHECK(refused(Balls{1, 55.0 * millimetre}, "dusty") == "unfit-state");
    CHECK(refused(Balls{1, 4.0 * millimetre}, "firm") == "out-of-range");
    CHECK(refused(Balls{1, 201.0 * millimetre}, "firm") == "out-of-range");
    CHECK(refused(Vessels{1, 0.4 * millilitre, "cup"}, "firm") == "out-of-range");
    CHECK(refused(Vessels{1, 21.0 * litre, "feeder"}, "firm") == "out-of-range");
}

TEST_CASE("a tub that is right, but too dry to squeeze, says so and tells no balls") {
    // Crumbly runs down to 0.8, a ball from 0.85 up: inside the band, and no ball.
    TubRequest tub = tub_with(1.0 * kilogram, Mass{}, "crumbly");
    const MixNumbers numbers = numbers_of(resolve(draft::fishmeal_mix(), draft::shelf()));
    tub.water = WaterPoured{wet(numbers, 0.83).water * tub.dry_mass / (1.0 * gram_per_millilitre)};
    tub.portions = {Balls{1, 55.0 * millimetre}, Vessels{1, 250.0 * millilitre, "cup"}};
    const TubAnswer answer = asked(draft::fishmeal_mix(), tub);
    REQUIRE(answer.feel_settled == "crumbly");
    REQUIRE(answer.makes.size() == 1);
    CHECK(answer.makes.front().called == "cup");
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings.front().code == "unfit-state");
}
