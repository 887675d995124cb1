#include "bait/free_offerings.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "bait/draft_shelf.h"
#include "bait/ingredient_completion.h"

using namespace baitwright;

namespace {

/// A pellet of that diameter, its length left to the rule of thumb.
Ingredient pellet(Length diameter) {
    Ingredient i;
    i.kind = IngredientKind::pellet;
    i.loose_density = draft::stated(650.0 * gram_per_litre);
    i.envelope_density = draft::stated(1.2 * gram_per_millilitre);
    i.absorption = draft::stated<Ratio>(0.4);
    i.diameter = draft::stated(diameter);
    complete(i);
    return i;
}

Ingredient seed(Length size, double spread) {
    Ingredient i;
    i.kind = IngredientKind::seed;
    i.loose_density = draft::stated(700.0 * gram_per_litre);
    i.envelope_density = draft::stated(1.25 * gram_per_millilitre);
    i.absorption = draft::stated<Ratio>(0.4);
    i.particle_size = draft::stated(size);
    i.particle_spread = draft::stated<Ratio>(spread);
    complete(i);
    return i;
}

}  // namespace

// By hand: a pellet 4 mm across and 1.2 x 4 mm long holds pi/4 x 0.4^2 x 0.48 = 0.0603186 ml and weighs 0.0723823 g;
// 100 g are 1381.55 of them. Sizes that spread by 1.05 about the median by mass: times exp(4.5 ln^2 1.05) = 1.010770.
TEST_CASE("pellets are counted as cylinders of their envelope density") {
    const double grain = std::numbers::pi / 4 * 0.4 * 0.4 * 0.48 * 1.2;
    CHECK(grain == Approx(0.0723823).epsilon(1e-6));
    CHECK(free_offerings_in(pellet(4.0 * millimetre), 100.0 * gram) == Approx(1381.55 * 1.010770).epsilon(1e-5));
}

TEST_CASE("seeds are counted as spheres") {
    const double grain = std::numbers::pi / 6 * 0.3 * 0.3 * 0.3 * 1.25;
    CHECK(free_offerings_in(seed(3.0 * millimetre, 1.0), 50.0 * gram) == Approx(50 / grain).epsilon(1e-12));
}

TEST_CASE("halving the size gives eight times as many") {
    const Mass mass = 250.0 * gram;
    CHECK(free_offerings_in(pellet(2.0 * millimetre), mass) ==
          Approx(8 * free_offerings_in(pellet(4.0 * millimetre), mass)).epsilon(1e-12));
    CHECK(free_offerings_in(seed(2.0 * millimetre, 1.15), mass) ==
          Approx(8 * free_offerings_in(seed(4.0 * millimetre, 1.15), mass)).epsilon(1e-12));
}

TEST_CASE("twice the mass is twice as many") {
    const Ingredient six = pellet(6.0 * millimetre);
    CHECK(free_offerings_in(six, 2.0 * kilogram) == Approx(2 * free_offerings_in(six, 1.0 * kilogram)));
    CHECK(free_offerings_in(six, Mass{}) == 0);
}

// Hatch & Choate 1929 (from memory), worked as a sum over the log-normal itself: equal shares of mass, each counted at
// its own size.
TEST_CASE("a spread of sizes counts as the sum over its classes does") {
    const double spread = 1.3, sigma = std::log(spread);
    double sum = 0, weight = 0;
    for (int step = -800; step <= 800; ++step) {
        const double z = step / 100.0, share = std::exp(-0.5 * z * z);
        const double size = 0.4 * std::exp(sigma * z);
        sum += share / (std::numbers::pi / 6 * size * size * size * 1.25);
        weight += share;
    }
    CHECK(free_offerings_in(seed(4.0 * millimetre, spread), 1.0 * gram) == Approx(sum / weight).epsilon(1e-6));
}

TEST_CASE("crumbs, powders, soils and liquids are not counted") {
    for (const char* name : {"brown crumb", "wheat flour", "sharp sand", "molasses"})
        CHECK(free_offerings_in(draft::shelf().ingredient(name), 1.0 * kilogram) == 0);
    CHECK(free_offerings_in(draft::shelf().ingredient("maggots"), 1.0 * kilogram) > 0);
}
