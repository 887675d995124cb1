#include "answers/pellets/soak_pellets.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "answers/mix/answer_mix.h"
#include "answers/soaking.h"
#include "physics/diffusion_in_sphere.h"
#include "physics/soaked_grain.h"
#include "quantities/fault.h"

using namespace baitwright;
using draft::soak_of;
using draft::soaked;

namespace {

bool warns(const SoakAnswer& answer, const std::string& code) {
    return std::any_of(answer.warnings.begin(), answer.warnings.end(),
                       [&](const Warning& w) { return w.code == code; });
}

SoakedAnswer only_soaked(const SoakRequest& request) {
    return soaked(request).soaked.at(0);
}

}  // namespace

// Common practice, no source: 4 mm pellets soak 5-6 min and stand 20-30; at 15 degC, by the defaults.
TEST_CASE("a soak of 4 mm pellets takes what anglers give it") {
    const SoakedAnswer answer = only_soaked(soak_of("fishmeal pellet 4 mm", 1.0 * kilogram));
    CHECK(answer.soak.middle.in(minute) > 5);
    CHECK(answer.soak.middle.in(minute) < 6);
    CHECK(answer.stand_ready.middle.in(minute) > 20);
    CHECK(answer.stand_ready.middle.in(minute) < 30);
    CHECK(answer.uptake == Approx(0.4));
}

TEST_CASE("water and weights balance, covered and measured") {
    CHECK(rc::check([] {
        SoakRequest request =
            soak_of(*rc::gen::element<std::string>("fishmeal micro pellet 2 mm", "fishmeal pellet 8 mm", "long pellet"),
                    *rc::gen::inRange(1, 5000) * gram, *rc::gen::inRange(0, 40));
        request.uptake = *rc::gen::inRange(1, 95) * 0.01;
        request.method = *rc::gen::element(SoakMethod::covered, SoakMethod::measured);
        const SoakedAnswer answer = only_soaked(request);
        const double film = request.method == SoakMethod::covered ? soaked_film : 0.0;
        RC_ASSERT(std::abs((answer.wet() - answer.dry - answer.inside).si() - film * answer.dry.si()) < 1e-12);
        RC_ASSERT(answer.pour.si() >= answer.inside.si());
        RC_ASSERT(answer.ready.core >= answer.drained.core - 1e-9);
        RC_ASSERT(answer.even.core >= answer.ready.core - 1e-9);
        RC_ASSERT(answer.even.surface <= answer.ready.surface + 1e-9);
    }));
}

TEST_CASE("a stage is as even as it says") {
    const SoakedAnswer answer = only_soaked(soak_of("fishmeal pellet 8 mm", 1.0 * kilogram));
    CHECK(answer.ready.core / answer.uptake == Approx(0.5).epsilon(1e-6));
    CHECK(answer.even.core / answer.uptake == Approx(0.8).epsilon(1e-6));
}

// Arrhenius with 35 kJ/mol between 5 and 20 degC: a factor of 2.17 (row ARRHENIUS, by the same law).
TEST_CASE("cold water makes it longer by Arrhenius, and the amounts stay") {
    const SoakedAnswer cold = only_soaked(soak_of("fishmeal pellet 4 mm", 1.0 * kilogram, 5)),
                       warm = only_soaked(soak_of("fishmeal pellet 4 mm", 1.0 * kilogram, 20));
    const double factor = std::exp(35000 / 8.314462618 * (1 / 278.15 - 1 / 293.15));
    CHECK(cold.soak.middle / warm.soak.middle == Approx(factor).epsilon(1e-9));
    CHECK(cold.stand_ready.middle / warm.stand_ready.middle == Approx(factor).epsilon(1e-9));
    CHECK(cold.wet().si() == Approx(warm.wet().si()));
}

// By hand: spreads of 5 % in diameter (twice), 50 % in D by default; at 15 degC the activation energy plays no part.
TEST_CASE("the range of times is that of the spreads") {
    const SoakedAnswer answer = only_soaked(soak_of("fishmeal pellet 4 mm", 1.0 * kilogram));
    const auto sigma_of = [](double spread) { return std::sqrt(std::log1p(spread * spread)); };
    const double sigma = std::hypot(2 * sigma_of(0.05), sigma_of(0.5));
    CHECK(answer.soak.high / answer.soak.middle == Approx(std::exp(1.6449 * sigma)).epsilon(1e-4));
    CHECK(answer.soak.middle / answer.soak.low == Approx(std::exp(1.6449 * sigma)).epsilon(1e-4));
}

TEST_CASE("the uptake of a soak by the clock lies between those of the quickest and the slowest likely pellets") {
    const SoakedAnswer answer = only_soaked(soak_of("fishmeal pellet 4 mm", 1.0 * kilogram));
    const GrainSize size{4.0 * millimetre, 4.8 * millimetre};
    const double factor = answer.soak.high / answer.soak.middle;
    const Area diffused = diffused_for_uptake(size, 0.4);
    CHECK(answer.uptake_range.low == Approx(double(grain_uptake(size, diffused / factor))).epsilon(0.02));
    CHECK(answer.uptake_range.high == Approx(double(grain_uptake(size, factor * diffused))).epsilon(0.02));
    CHECK(answer.wet_range.low < answer.wet());
    CHECK(answer.wet_range.high > answer.wet());
}

TEST_CASE("soaking by the clock for the time that is advised gives the uptake that was wanted") {
    SoakRequest request = soak_of("fishmeal pellet 6 mm", 1.0 * kilogram);
    request.items.front().of = "fishmeal pellet 8 mm";
    const SoakedAnswer advised = only_soaked(request);
    request.soaked = advised.soak.middle;
    CHECK(only_soaked(request).uptake == Approx(0.4).epsilon(1e-9));
}

TEST_CASE("pellets left under water too long are said to be over-soaked, and hardly soaked ones too") {
    SoakRequest request = soak_of("fishmeal micro pellet 2 mm", 1.0 * kilogram);
    request.soaked = 2.0 * hour;
    CHECK(warns(soaked(request), "over-soaked"));
    CHECK(soaked(request).soaked.at(0).stand_ready.middle == Time{});
    request.soaked = 6.0 * second;
    CHECK(warns(soaked(request), "hardly-soaked"));
    request.soaked.reset();
    CHECK(soaked(request).warnings.empty());
}

TEST_CASE("how long is right is told where they were left by the clock: as long as the usual soak takes") {
    SoakRequest request = soak_of("fishmeal micro pellet 2 mm", 1.0 * kilogram, 12);
    const SoakedAnswer usual = only_soaked(request);
    CHECK_FALSE(usual.right_soak);
    for (const Time left : {10.0 * second, 40.0 * minute, 10.0 * hour}) {
        request.soaked = left;
        const SoakedAnswer found = only_soaked(request);
        REQUIRE(found.right_soak);
        CHECK(found.right_soak->middle.in(second) == Approx(usual.soak.middle.in(second)).epsilon(1e-9));
        CHECK(found.right_soak->low.in(second) == Approx(usual.soak.low.in(second)).epsilon(1e-9));
        CHECK(found.right_soak->high.in(second) == Approx(usual.soak.high.in(second)).epsilon(1e-9));
    }
}

TEST_CASE(
    "a pellet much longer than thick takes longer than a short one, and one more than twice as thick far longer") {
    const Time rod = only_soaked(soak_of("long pellet", 1.0 * kilogram)).soak.middle;
    CHECK(rod > only_soaked(soak_of("fishmeal pellet 4 mm", 1.0 * kilogram)).soak.middle);
    CHECK(rod < only_soaked(soak_of("fishmeal pellet 8 mm", 1.0 * kilogram)).soak.middle);
}

TEST_CASE("the curve starts dry, goes through the stages and never loses water") {
    const SoakedAnswer answer = only_soaked(soak_of("fishmeal pellet 4 mm", 1.0 * kilogram));
    CHECK(answer.curve.front().mean == 0.0);
    CHECK(answer.curve.front().at == Time{});
    for (std::size_t i = 1; i < answer.curve.size(); ++i) {
        CHECK(answer.curve[i].at > answer.curve[i - 1].at);
        CHECK(answer.curve[i].mean >= answer.curve[i - 1].mean - 1e-12);
        CHECK(answer.curve[i].core >= answer.curve[i - 1].core - 1e-9);
    }
    CHECK(answer.curve.back().mean == Approx(0.4));
    CHECK(answer.curve.back().at > answer.even.at);
}

// By hand: half the size is an eighth of the volume, of the same envelope density.
TEST_CASE("as many grains of 1 mm as 500 g of 2 mm has weigh an eighth of it") {
    const SoakedAnswer answer =
        only_soaked(soak_of("fishmeal micro pellet 1 mm", AsManyAs{500.0 * gram, "fishmeal micro pellet 2 mm"}));
    CHECK(answer.dry.in(gram) == Approx(62.5));
    CHECK(answer.grains.all == Approx(only_soaked(soak_of("fishmeal micro pellet 2 mm", 500.0 * gram)).grains.all));
}

TEST_CASE("a feed made of shares splits a volume by the scoop and a mass by the scale") {
    SoakRequest request = soak_of("fishmeal micro pellet 2 mm", 2.0 * imperial_pint);
    request.items.push_back({"fishmeal micro pellet 1 mm", std::nullopt, 1});
    const SoakAnswer scooped = soaked(request);
    CHECK(scooped.soaked[0].dry_volume.in(imperial_pint) == Approx(1));
    CHECK(scooped.soaked[1].dry_volume.in(imperial_pint) == Approx(1));
    request.total = 900.0 * gram;
    request.items[1].parts = 2;
    CHECK(soaked(request).soaked[0].dry.in(gram) == Approx(300));
    CHECK(soaked(request).soaked[1].dry.in(gram) == Approx(600));
    request.items[0].amount = 50.0 * gram;
    CHECK(soaked(request).soaked[0].dry.in(gram) == Approx(50));
    CHECK(soaked(request).soaked[1].dry.in(gram) == Approx(900));
}

// By hand: a cup of 250 ml has 250/V of the grains in V; 0.01 m2 of a round carpet of 1 m has 0.01/(pi/4) of a cup's.
TEST_CASE("grains in a cup and under a hand go by their share of volume and patch") {
    SoakRequest request = soak_of("fishmeal micro pellet 2 mm", 1.0 * kilogram);
    const SoakedAnswer answer = only_soaked(request);
    CHECK(answer.grains.in_cup == Approx(answer.grains.all * 250 / answer.wet_volume.in(millilitre)));
    CHECK(answer.grains.in_hand == Approx(answer.grains.in_cup * 0.01 / 0.785398));
    request.portions.carpet = 2.0 * metre;
    CHECK(only_soaked(request).grains.in_hand == Approx(answer.grains.in_hand / 4));
}

// By hand: 20 ml of glycerol are 25.2 g; on 1 kg of micro pellets the water to cover them is 320 + 1.2 x 732 = 1198 g.
TEST_CASE("a glaze is told by its strength in the water and in the pellets, and what it does to keeping") {
    SoakRequest request = soak_of("fishmeal micro pellet 2 mm", 1.0 * kilogram);
    request.in_the_water.push_back({"glycerol", 20.0 * millilitre});
    const SoakedAnswer answer = only_soaked(request);
    REQUIRE(answer.additives.size() == 1);
    CHECK(answer.additives[0].mass.in(gram) == Approx(25.2));
    CHECK(answer.additives[0].strength == Approx(25.2 / (25.2 + answer.pour.in(gram))));
    CHECK(answer.additives[0].in_pellet ==
          Approx(answer.additives[0].strength * (answer.wet() - answer.dry).si() / answer.wet().si()));
    REQUIRE(answer.water_activity);
    CHECK(*answer.water_activity < 1.0);
    CHECK(*answer.water_activity > 0.98);
    request.method = SoakMethod::measured;
    const SoakedAnswer measured = only_soaked(request);
    CHECK(*measured.water_activity < *answer.water_activity);  // none of it is poured away
    CHECK((measured.pour + measured.additives[0].mass).in(gram) == Approx(measured.inside.in(gram)));
    CHECK(measured.additives[0].in_pellet * measured.wet().in(gram) == Approx(25.2));
    request.in_the_water[0].dose = 2.0 * litre;
    CHECK_THROWS_WITH(soaked(request), Catch::Contains("more than"));
}

TEST_CASE("salt and glycerol together hold back more than either alone") {
    SoakRequest request = soak_of("fishmeal micro pellet 2 mm", 1.0 * kilogram);
    request.method = SoakMethod::measured;
    request.in_the_water = {{"glycerol", 60.0 * millilitre}};
    const double glycerol = *only_soaked(request).water_activity;
    request.in_the_water = {{"salt", 30.0 * gram}};
    const double salt = *only_soaked(request).water_activity;
    request.in_the_water.push_back({"glycerol", 60.0 * millilitre});
    CHECK(*only_soaked(request).water_activity < std::min(glycerol, salt));
    // Ross: the product; a little less, since what is stirred in takes the place of water.
    CHECK(*only_soaked(request).water_activity < glycerol * salt);
    CHECK(*only_soaked(request).water_activity > 0.98 * glycerol * salt);
}

// By the solubility of sucrose: 64.4 % at 0 degC, 70.2 % at 40 (tests/reference/sucrose_solubility.csv).
TEST_CASE("sugar that warm water dissolves is too much for cold") {
    SoakRequest request = soak_of("fishmeal micro pellet 2 mm", 1.0 * kilogram, 40);
    const double water = only_soaked(request).pour.in(gram);
    request.in_the_water.push_back({"sugar", 0.68 / 0.32 * water * gram});
    CHECK_FALSE(warns(soaked(request), "undissolved"));
    request.water = Temperature::from_celsius(5);
    CHECK(warns(soaked(request), "undissolved"));
}

TEST_CASE("a dose over the label is answered, and the answer is no") {
    SoakRequest request = soak_of("fishmeal micro pellet 2 mm", 2.0 * kilogram);
    request.in_the_water.push_back({"red dye", parse_dose_rate("5 g per kg dry")});
    CHECK(only_soaked(request).additives[0].mass.in(gram) == Approx(10));
    CHECK(soaked(request).warnings.empty());
    request.in_the_water[0].dose = 11.0 * gram;
    const SoakAnswer over = soaked(request);
    REQUIRE(over.warnings.size() == 1);
    CHECK(over.warnings[0].answer_is_no);
    CHECK(*over.soaked[0].additives[0].of_label_max == Approx(1.1));
}

TEST_CASE("more salt than water can hold is said, and no strength is made up") {
    SoakRequest request = soak_of("fishmeal micro pellet 2 mm", 1.0 * kilogram);
    request.in_the_water.push_back({"salt", 2.0 * kilogram});
    CHECK(warns(soaked(request), "undissolved"));
    CHECK_FALSE(only_soaked(request).water_activity);
}

TEST_CASE("a mix says how its soaked part is soaked, as the soak itself does") {
    Recipe recipe = draft::mix_of("with pellets", {{"brown crumb", 2}, {"fishmeal pellet 4 mm", 1}});
    recipe.parts[1].prepare = Preparation::soaked;
    MixRequest request;
    request.target = DryMass{1.5 * kilogram};
    request.water_temperature = Temperature::from_celsius(8);
    const MixAnswer mix = answer_mix(draft::shelf(), recipe, request);
    const SoakedAnswer alone = only_soaked(soak_of("fishmeal pellet 4 mm", 0.5 * kilogram, 8));
    REQUIRE(mix.parts[1].soak);
    CHECK_FALSE(mix.parts[0].soak);
    CHECK(mix.parts[1].soak->pour.si() == Approx(alone.pour.si()));
    CHECK(mix.parts[1].soak->soak.si() == Approx(alone.soak.middle.si()));
    CHECK(mix.parts[1].soak->wet.si() == Approx(alone.wet().si()));
}

TEST_CASE("what cannot be soaked so is refused") {
    const auto refused = [](SoakRequest request, const std::string& code) {
        try {
            soaked(request);
        } catch (const Error& error) {
            return error.faults().front().code == code;
        }
        return false;
    };
    SoakRequest fine = soak_of("fishmeal pellet 4 mm", 1.0 * kilogram), request = fine;
    CHECK_NOTHROW(soaked(fine));
    request.water = Temperature::from_celsius(-2);
    CHECK(refused(request, "out-of-range"));
    request.water = Temperature::from_celsius(100);
    CHECK(refused(request, "out-of-range"));
    request = fine;
    request.items.front().of = "tares";
    CHECK(refused(request, "not-a-pellet"));
    request.items.front().of = "brown crumb";
    CHECK(refused(request, "not-a-pellet"));
    request.items.front().of = "fishmeal pelet 4 mm";
    CHECK(refused(request, "unknown-ingredient"));
    request = fine;
    request.total = {};
    CHECK(refused(request, "no-amount"));
    request.items.front().amount = 100.0 * gram;
    CHECK_NOTHROW(soaked(request));
    request.total = 1.0 * kilogram;
    CHECK(refused(request, "two-amounts"));
    request = fine;
    request.total = 0.0 * gram;
    CHECK(refused(request, "out-of-range"));
    request.total = 20000.0 * kilogram;
    CHECK(refused(request, "out-of-range"));
    request = fine;
    request.uptake = 1.0;
    CHECK(refused(request, "out-of-range"));
    request = fine;
    request.spare = -0.1;
    CHECK(refused(request, "out-of-range"));
    request = fine;
    request.soaked = 10.0 * minute;
    request.method = SoakMethod::measured;
    CHECK(refused(request, "unfit-flag"));
    request = fine;
    request.soaked = 60.0 * hour;
    CHECK(refused(request, "out-of-range"));
    request = fine;
    request.portions.carpet = 0.0 * metre;
    CHECK(refused(request, "out-of-range"));
    request = fine;
    request.in_the_water.push_back({"brown crumb", 5.0 * gram});
    CHECK(refused(request, "not-an-additive"));
}
