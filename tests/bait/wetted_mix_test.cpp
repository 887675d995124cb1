#include "bait/wetted_mix.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "bait/random_mixes.h"

using namespace baitwright;

namespace {

double in_grams(const std::variant<Mass, Volume>& amount, const Ingredient& i) {
    if (const Mass* mass = std::get_if<Mass>(&amount)) return mass->in(gram);
    const Density density = i.kind == IngredientKind::liquid ? i.density.value : i.loose_density.value;
    return (std::get<Volume>(amount) * density).in(gram);
}

/// Everything in a tub with one gram of dry mix, told from the recipe itself.
struct Tub {
    double dry = 0, soaked_water = 0, film = 0;
    double drinkers = 0, absorption = 0, slump = 0;
    double additives = 0, wetting_of_liquids = 0;
};

/// What the doses come to for so much water and wet mass, by their own words.
Tub tub_of(const ResolvedMix& mix, double water, double wet_mass) {
    Tub tub;
    for (const SolidPart& part : mix.solids) {
        const Ingredient& i = part.ingredient;
        tub.dry += part.share;
        if (part.prepare == Preparation::soaked) {
            tub.soaked_water += part.share * 0.40 * i.capacity.value;
            tub.film += part.share * 0.03;
        } else if (i.kind != IngredientKind::particle) {
            tub.drinkers += part.share;
            tub.absorption += part.share * i.absorption.value;
            tub.slump += part.share * i.slump.value;
        }
    }
    const auto add = [&](const Ingredient& i, double grams) {
        tub.additives += grams;
        if (i.kind == IngredientKind::liquid)
            tub.wetting_of_liquids +=
                grams / i.density.value.in(gram_per_millilitre)*i.wetting.value.in(gram_per_millilitre);
    };
    for (const LiquidPart& liquid : mix.liquids) add(liquid.ingredient, liquid.per_dry);
    for (const ResolvedDose& dose : mix.doses) {
        const double each = in_grams(dose.rate.each, dose.ingredient);
        switch (dose.rate.basis) {
            case DoseBasis::per_kg_dry:
            case DoseBasis::share_of_dry:
                add(dose.ingredient, each / 1000 * dose.reach);
                break;
            case DoseBasis::per_kg_wet:
                add(dose.ingredient, each / 1000 * wet_mass * dose.reach);
                break;
            case DoseBasis::per_litre_water:
                add(dose.ingredient, each / 1000 * water * dose.reach);
                break;
            case DoseBasis::per_pint_pellets:
                add(dose.ingredient, each * dose.pellets.in(millilitre_per_gram) / 568.26125);
                break;
        }
    }
    return tub;
}

WettedMix wetted(const ResolvedMix& mix, double h, double already = 0) {
    return wet(numbers_of(mix), h, already);
}

double drawn_wetness() {
    return draft::drawn(5, 300, 0.01);
}

}  // namespace

TEST_CASE("the wet mass is all that went in") {
    CHECK(rc::check([] {
        const ResolvedMix mix = draft::drawn_mix(draft::Extras::all);
        const double already = draft::drawn(0, 40, 0.01);
        const WettedMix w = wetted(mix, drawn_wetness(), already);
        const Tub tub = tub_of(mix, w.water + already, w.wet_mass);
        RC_ASSERT(std::abs(tub.dry + tub.soaked_water + tub.film + w.water + already + tub.additives - w.wet_mass) <
                  1e-11);
    }));
}

TEST_CASE("water, liquids and films together are what the feel asks for, whatever the doses hang on") {
    CHECK(rc::check([] {
        const ResolvedMix mix = draft::drawn_mix(draft::Extras::all);
        const double h = drawn_wetness(), already = draft::drawn(0, 40, 0.01);
        const WettedMix w = wetted(mix, h, already);
        const Tub tub = tub_of(mix, w.water + already, w.wet_mass);
        const double present = w.water + already + tub.film + tub.wetting_of_liquids;
        const double asked = h <= 1 ? h * tub.absorption : tub.absorption + (h - 1) * (tub.slump - tub.absorption);
        RC_ASSERT(std::abs(w.wetting_present - (present - w.water)) < 1e-11);
        if (w.too_wet) {
            RC_ASSERT(w.water == 0.0);
            RC_ASSERT(present > asked);
            RC_ASSERT(w.wetness > h);
        } else {
            RC_ASSERT(std::abs(present - asked) < 1e-11);
            RC_ASSERT(w.wetness == h);
        }
    }));
}

TEST_CASE("each additive weighs what its own rate says") {
    CHECK(rc::check([] {
        const ResolvedMix mix = draft::drawn_mix(draft::Extras::all);
        const WettedMix w = wetted(mix, drawn_wetness());
        double sum = 0;
        for (const Ratio grams : w.additives) sum += grams;
        RC_ASSERT(w.additives.size() == mix.liquids.size() + mix.doses.size());
        RC_ASSERT(std::abs(sum - tub_of(mix, w.water, w.wet_mass).additives) < 1e-11);
    }));
}

TEST_CASE("the wetness of a tub that is too wet already is that of what is in it") {
    CHECK(rc::check([] {
        const ResolvedMix mix = draft::drawn_mix(draft::Extras::all);
        const double already = draft::drawn(100, 250, 0.01);
        const WettedMix w = wetted(mix, 0.5, already);
        RC_PRE(w.too_wet);
        const Tub tub = tub_of(mix, already, w.wet_mass);
        const double a = tub.absorption / tub.drinkers, b = tub.slump / tub.drinkers;
        const double per_gram = (already + tub.film + tub.wetting_of_liquids) / tub.drinkers;
        const double h = per_gram < a ? per_gram / a : 1 + (per_gram - a) / (b - a);
        RC_ASSERT(std::abs(w.wetness / h - 1) < 1e-9);
    }));
}

TEST_CASE("a wetter feel takes more water") {
    CHECK(rc::check([] {
        const ResolvedMix mix = draft::drawn_mix(draft::Extras::all);
        const double h = drawn_wetness(), more = draft::drawn(1, 50, 0.01);
        const WettedMix drier = wetted(mix, h), wetter = wetted(mix, h + more);
        RC_ASSERT(wetter.water > drier.water || wetter.too_wet);
        RC_ASSERT(wetter.wet_mass >= drier.wet_mass);
    }));
}

TEST_CASE("water that is in already is water that need not be added") {
    CHECK(rc::check([] {
        const ResolvedMix mix = draft::drawn_mix(draft::Extras::all);
        const double h = drawn_wetness(), already = draft::drawn(1, 30, 0.01);
        const WettedMix without = wetted(mix, h), with = wetted(mix, h, already);
        RC_PRE(!without.too_wet && !with.too_wet);
        RC_ASSERT(std::abs(without.water - with.water - already) < 1e-11);
        RC_ASSERT(std::abs(without.wet_mass - with.wet_mass) < 1e-11);
    }));
}

// By hand: the fishmeal mix's A is 0.4 x 0.50 + 0.3 x 0.65 + 0.2 x 0.55 + 0.1 x 0.42 = 0.547, its B 0.934.
TEST_CASE("A and B of a mix are those of its parts by mass") {
    const WettedMix w = wetted(resolve(draft::fishmeal_mix(), draft::shelf()), 1.0);
    CHECK(w.need.marks.absorption == Approx(0.547).epsilon(1e-12));
    CHECK(w.need.marks.slump == Approx(0.934).epsilon(1e-12));
    CHECK(w.need.wetted_share == Approx(1.0));
    CHECK(w.water == Approx(0.547).epsilon(1e-12));
}

// By hand: 600 g of crumb drink 0.65 x 600 = 390 g; 400 g of soaked pellets bring 160 g inside and 12 g of film, and
// weigh 572 g. So 378 g of water, and 600 + 572 + 378 = 1550 g in the tub.
TEST_CASE("soaked pellets bring their own water and lend the mix only their film") {
    Recipe recipe = draft::mix_of("carried", {{"brown crumb", 6}, {"fishmeal micro pellet 2 mm", 4}});
    recipe.parts.back().prepare = Preparation::soaked;
    const WettedMix w = wetted(resolve(recipe, draft::shelf()), 1.0);
    CHECK(w.need.wetted_share == Approx(0.6));
    CHECK(w.need.marks.absorption == Approx(0.65));
    CHECK(w.water == Approx(0.378).epsilon(1e-12));
    CHECK(w.wet_mass == Approx(1.550).epsilon(1e-12));
}

TEST_CASE("live feed takes no water") {
    const WettedMix w =
        wetted(resolve(draft::mix_of("live", {{"brown crumb", 1}, {"maggots", 1}}), draft::shelf()), 1.0);
    CHECK(w.need.wetted_share == Approx(0.5));
    CHECK(w.water == Approx(0.325).epsilon(1e-12));
    CHECK(w.wet_mass == Approx(1.325).epsilon(1e-12));
}

// By hand: crumb at A wants 650 g a kilo. 200 ml of molasses weigh 280 g and wet like 160 g: 490 g of water.
TEST_CASE("a liquid part counts by its wetting towards the feel and by its mass in the tub") {
    Recipe recipe = draft::mix_of("sweet", {{"brown crumb", 1}, {"molasses", 0.28}});
    const WettedMix w = wetted(resolve(recipe, draft::shelf()), 1.0);
    CHECK(w.water == Approx(0.490).epsilon(1e-12));
    CHECK(w.wet_mass == Approx(1 + 0.280 + 0.490).epsilon(1e-12));
}

// By hand: W = 0.65 - 0.9 x v and T = 1 + W + 1.05 v with v = 0.05 T ml (50 ml per kg wet, 1.05 g/ml, 0.9 g/ml).
// T (1 - 0.0525 + 0.045) = 1.65, so T = 1.65/0.9925.
TEST_CASE("a dose by wet mass is solved together with the water") {
    Recipe recipe = draft::crumb_mix();
    recipe.doses.push_back({"sweet liquid", {DoseBasis::per_kg_wet, 50.0 * millilitre}});
    const WettedMix w = wetted(resolve(recipe, draft::shelf()), 1.0);
    CHECK(w.wet_mass == Approx(1.65 / 0.9925).epsilon(1e-12));
    CHECK(w.water == Approx(0.65 - 0.9 * 0.05 * 1.65 / 0.9925).epsilon(1e-12));
}

// By hand: W (1 + 0.1 x 0.9) = 0.65 for 100 ml to the litre that wets by 0.9 g/ml.
TEST_CASE("a dose by the litre of water is solved together with the water") {
    Recipe recipe = draft::crumb_mix();
    recipe.doses.push_back({"sweet liquid", {DoseBasis::per_litre_water, 100.0 * millilitre}});
    const WettedMix w = wetted(resolve(recipe, draft::shelf()), 1.0);
    CHECK(w.water == Approx(0.65 / 1.09).epsilon(1e-12));
    CHECK(w.additives.front() == Approx(0.1 * 1.05 * 0.65 / 1.09).epsilon(1e-12));
}

// By hand: a kilo of 2 mm pellets at 650 g/l is 1538.46 ml, 2.70732 imperial pints; 15 ml each makes 40.6098 ml.
TEST_CASE("a dose by the pint of pellets goes by their loose volume") {
    Recipe recipe = draft::micro_mix();
    recipe.doses.push_back({"sweet liquid", {DoseBasis::per_pint_pellets, 15.0 * millilitre}});
    const WettedMix w = wetted(resolve(recipe, draft::shelf()), 1.0);
    CHECK(w.additives.front() == Approx(0.0406098 * 1.05).epsilon(1e-5));
}

TEST_CASE("a dose inside an inner recipe goes by that recipe's own mass") {
    MemoryShelf shelf(&draft::shelf());
    Recipe inner = draft::crumb_mix();
    inner.doses.push_back({"salt", {DoseBasis::share_of_dry, 20.0 * gram}});
    shelf.put(inner);
    const WettedMix w = wetted(resolve(draft::mix_of("outer", {{"crumb mix", 1}, {"maize meal", 3}}), shelf), 1.0);
    CHECK(w.additives.front() == Approx(0.02 / 4).epsilon(1e-12));
}

TEST_CASE("a mix in which nothing drinks takes no water") {
    const WettedMix w = wetted(resolve(draft::mix_of("live", {{"maggots", 1}}), draft::shelf()), 1.2);
    CHECK(w.need.wetted_share == 0.0);
    CHECK(w.water == 0.0);
    CHECK(w.wet_mass == Approx(1.0));
    CHECK_FALSE(w.too_wet);
}
