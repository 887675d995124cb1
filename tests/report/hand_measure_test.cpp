#include "report/hand_measure.h"

#include <catch2/catch.hpp>

#include "quantities/units.h"

using namespace baitwright;

namespace {

HandAmount powder_of(double grams, double millilitres) {
    return {"powder", grams * gram, millilitres * millilitre, 0, false};
}

HandAmount liquid_of(double millilitres) {
    return {"liquid", 1.2 * millilitres * gram, millilitres * millilitre, 0, true};
}

HandAmount grains_of(double grams, double count) {
    return {"hemp", grams * gram, 2 * grams * millilitre, count, false};
}

}  // namespace

TEST_CASE("what a scale or a jug can tell is not said by hand, nor is nothing") {
    CHECK(hand_measure(powder_of(5, 10)).empty());
    CHECK(hand_measure(grains_of(5, 120)).empty());
    CHECK(hand_measure(liquid_of(20)).empty());
    CHECK(hand_measure(powder_of(0, 0)).empty());
    CHECK(hand_measure(liquid_of(0)).empty());
    CHECK(hand_measures({powder_of(50, 100), liquid_of(200)}).empty());
}

TEST_CASE("pellets and seeds are counted, as far as anybody counts") {
    CHECK(hand_measure(grains_of(4.1, 99.3)) == "about 99 grains");
    CHECK(hand_measure(grains_of(0.02, 0.6)) == "about 1 grain");
    // 3 g of micros, 6 ml loose: too many to count, and 6/5 = 1.2 teaspoons, to halves 1.
    CHECK(hand_measure(grains_of(3, 4000)) == "about 1 level teaspoon");
}

TEST_CASE("powders go by the level teaspoon of 5 ml, and below a fifth of one by the pinch of 0.4 g") {
    CHECK(hand_measure(powder_of(2, 2.5)) == "about 1/2 level teaspoon");       // 2.5/5 = 0.5
    CHECK(hand_measure(powder_of(0.7, 1.1)) == "about 1/4 level teaspoon");     // 1.1/5 = 0.22
    CHECK(hand_measure(powder_of(4.5, 7.6)) == "about 1 1/2 level teaspoons");  // 7.6/5 = 1.52
    CHECK(hand_measure(powder_of(4.5, 10.2)) == "about 2 level teaspoons");     // 10.2/5 = 2.04
    CHECK(hand_measure(powder_of(0.8, 0.9)) == "about 2 pinches");              // 0.8/0.4
    CHECK(hand_measure(powder_of(0.4, 0.5)) == "about 1 pinch");
    CHECK(hand_measure(powder_of(0.2, 0.3)) == "about half a pinch");
    CHECK(hand_measure(powder_of(0.05, 0.1)) == "less than half a pinch");
}

TEST_CASE("liquids go by the cap of a bottle, which holds a teaspoon, and by the drop") {
    CHECK(hand_measure(liquid_of(14.5)) == "about 3 caps (5 ml a cap)");  // 14.5/5 = 2.9
    CHECK(hand_measure(liquid_of(7.5)) == "about 1 1/2 caps (5 ml a cap)");
    CHECK(hand_measure(liquid_of(5)) == "about 1 cap (5 ml a cap)");
    CHECK(hand_measure(liquid_of(2.5)) == "about 1/2 cap (5 ml a cap)");
    CHECK(hand_measure(liquid_of(1.3)) == "about 1/4 teaspoon");
    CHECK(hand_measure(liquid_of(0.6)) == "about 12 drops");  // 20 to the millilitre
    CHECK(hand_measure(liquid_of(0.01)) == "about 1 drop");
}

TEST_CASE("a measure by hand is never off by more than a hand is") {
    // What the words say, against what was asked: within half a step, which is a third at the smallest spoon.
    for (double millilitres = 1.0; millilitres < 20; millilitres += 0.1) {
        const std::string said = hand_measure(liquid_of(millilitres));
        double whole = 0, over = 0, under = 1;
        const std::string number = said.substr(6);
        if (std::sscanf(number.c_str(), "%lf %lf/%lf", &whole, &over, &under) == 3)
            whole += over / under;
        else if (std::sscanf(number.c_str(), "%lf/%lf", &over, &under) == 2)
            whole = over / under;
        INFO(said << " for " << millilitres << " ml");
        CHECK(whole * teaspoon_ml == Approx(millilitres).epsilon(0.34));
    }
}

TEST_CASE("all that is too little for the scale stands in one sentence, the rest is left out") {
    HandAmount sweet = powder_of(0.8, 0.9), meal = powder_of(400, 800), hemp = grains_of(4.1, 99.3);
    sweet.name = "sweetener";
    CHECK(hand_measures({sweet, meal, hemp}) == "About 2 pinches of sweetener; about 99 grains of hemp.");
    CHECK(hand_measure_behind(sweet) == ", about 2 pinches");
    CHECK(hand_measure_behind(meal).empty());
}
