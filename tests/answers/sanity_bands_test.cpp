#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "answers/asking.h"
#include "bait/random_mixes.h"

/// Section 11 of the method: what a prototype, written apart from this code, gave for four mixes; not
/// measurements. Its digits were cut, not rounded (817.9 g of water stands there as 817), so each holds to one of its
/// last digit. And what anglers find, marked "common practice, no source".
using namespace baitwright;
using draft::kilo;

namespace {

struct Band {
    const char* name;
    Recipe recipe;
    double absorption, slump, firm_water, riddled_litres, squeezed_litres;
    int balls;
    double ball_grams, soft_water, cupped_density;
};

std::vector<Band> bands() {
    return {{"fishmeal", draft::fishmeal_mix(), .55, .93, 624, 2.6, 1.41, 16, 100, 817, 1.12},
            {"crumb", draft::crumb_mix(), .65, 1.12, 744, 3.1, 1.51, 17, 100, 979, 1.14},
            {"micro", draft::micro_mix(), .38, .62, 428, 2.2, 1.27, 15, 98, 548, 1.06},
            {"leam", draft::leam_mix(), .17, .39, 183, 1.3, 0.86, 10, 120, 274, 1.30}};
}

MixAnswer in_state(const Recipe& recipe, const char* feel, MixState state) {
    MixRequest request = draft::request_for(DryMass{1.0 * kilogram}, feel);
    request.state = state;
    return draft::scaled(recipe, request);
}

const double ball_ml = std::numbers::pi / 6 * 5.5 * 5.5 * 5.5;

}  // namespace

TEST_CASE("the four mixes come out as the prototype had them, to one of the last digit printed") {
    for (const Band& band : bands()) {
        CAPTURE(band.name);
        const auto printed = [](double value, double digit) { return Approx(value).epsilon(0).margin(digit); };
        const MixAnswer firm = kilo(band.recipe, "firm"), soft = in_state(band.recipe, "soft", MixState::cupped);
        const MixAnswer ball = in_state(band.recipe, "firm", MixState::squeezed);
        CHECK(firm.marks.absorption == printed(band.absorption, 0.01));
        CHECK(firm.marks.slump == printed(band.slump, 0.01));
        CHECK(firm.water_to_add.in(gram) == printed(band.firm_water, 1));
        CHECK(firm.wet_volume.in(litre) == printed(band.riddled_litres, 0.1));
        CHECK(ball.wet_volume.in(litre) == printed(band.squeezed_litres, 0.01));
        CHECK(std::lround(ball.wet_volume.in(millilitre) / ball_ml) == band.balls);
        CHECK((ball.wet_mass / ball.wet_volume).in(gram_per_millilitre)*ball_ml == printed(band.ball_grams, 1));
        CHECK(soft.water_to_add.in(gram) == printed(band.soft_water, 1));
        CHECK((soft.wet_mass / soft.wet_volume).in(gram_per_millilitre) == printed(band.cupped_density, 0.01));
    }
}

TEST_CASE("any mix of the usual crumbs and meals makes 15 to 18 balls and 2.3 to 3.2 litres a kilo") {
    for (const char* meal : {"fishmeal, brown", "maize meal", "semolina", "crustacean meal"})
        for (const char* crumb : {"brown crumb", "biscuit crumb", "sweet cake crumb"}) {
            CAPTURE(meal, crumb);
            const Recipe recipe = draft::mix_of("usual", {{meal, 1}, {crumb, 1}});
            const MixAnswer ball = in_state(recipe, "firm", MixState::squeezed);
            const double count = ball.wet_volume.in(millilitre) / ball_ml;
            CHECK(std::lround(count) >= 15);
            CHECK(std::lround(count) <= 18);
            CHECK(ball.wet_mass.in(gram) / count >= 95);
            CHECK(ball.wet_mass.in(gram) / count <= 105);
            const double litres = kilo(recipe, "firm").wet_volume.in(litre);
            CHECK(std::round(10 * litres) >= 23);
            CHECK(std::round(10 * litres) <= 32);
            const MixAnswer cup = in_state(recipe, "soft", MixState::cupped);
            CHECK(cup.wet_mass / cup.wet_volume >= 1.05 * gram_per_millilitre);
        }
}

TEST_CASE("200 ml of molasses save about 160 g of water") {
    Recipe sweet = draft::fishmeal_mix();
    sweet.parts.push_back({"molasses", Share{10 * 0.28}});
    const double saved = (kilo(draft::fishmeal_mix(), "firm").water_to_add - kilo(sweet, "firm").water_to_add).in(gram);
    CHECK(saved == Approx(160).epsilon(1e-9));
}

TEST_CASE("a kilo overshot by 200 ml is mended by about 320 g of the same mix") {
    MixRequest request = draft::request_for(DryMass{1.0 * kilogram}, "firm");
    request.already_added = 824.4 * millilitre;
    CHECK(draft::scaled(draft::fishmeal_mix(), request).dry_to_add.in(gram) == Approx(320).epsilon(0).margin(5));
}

TEST_CASE("a fishmeal mix takes a bit more than half its weight of water to ball (common practice, no source)") {
    const double ratio = kilo(draft::fishmeal_mix(), "firm").water_to_add / (1.0 * kilogram);
    CHECK(ratio > 0.5);
    CHECK(ratio < 0.7);
}

TEST_CASE("a pint of 2 mm pellets weighs about 370 g (common practice, no source)") {
    Recipe recipe;
    recipe.name = "pint";
    recipe.parts = {{"fishmeal micro pellet 2 mm", 1.0 * imperial_pint}};
    CHECK(draft::scaled(recipe, draft::request_for(AsWritten{})).dry_mass.in(gram) ==
          Approx(370).epsilon(0).margin(15));
}
