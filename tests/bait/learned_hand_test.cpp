#include "bait/learned_hand.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "bait/draft_shelf.h"
#include "bait/resolve_mix.h"

using namespace baitwright;

namespace {

Ingredient measured(Ingredient i, double absorption, double slump, double spread = 0.05) {
    i.absorption = {absorption, spread, {Origin::measured, "squeeze test"}};
    i.slump = {slump, spread, {Origin::measured, "up-ended pot"}};
    return i;
}

const Ingredient& crumb() {
    static const Ingredient crumb = draft::shelf().ingredient("brown crumb");
    return crumb;
}

/// Three of brown crumb and one of maize meal.
Recipe crumb_and_maize() {
    return draft::mix_of("crumb and maize", {{"brown crumb", 3}, {"maize meal", 1}});
}

double variance(double spread) {
    return std::log(1 + spread * spread);
}

}  // namespace

TEST_CASE("where nothing was measured nothing is learned, and the marks are those of the shelf") {
    const ResolvedMix mix = resolve(crumb_and_maize(), draft::shelf());
    CHECK_FALSE(mix.hand.learned);
    CHECK(mix.hand.shift(MarkOrigin::from_memory) == 1);
    const WaterMarks marks = known_marks(mix.solids[0], mix.hand);
    CHECK(marks.absorption == 0.65);
    CHECK(marks.slump == 1.12);
}

// By hand: the absorption alone was measured, at 0.78 for 0.65. It is from memory, so the hand in the long run and the
// shared error take their parts of ln 1.2 by their variances, of all there is: those two, the default's own 15 %, and
// the bag's moisture of 6.5 % +- 15 %, which moves ln A by 0.065 sigma (1 + 0.78)/(1 - 0.065)/0.78.
TEST_CASE("one measured absorption shares what it is off by among all that it may be off by") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient mine = crumb();
    mine.absorption = {0.78, 0.05, {Origin::measured, "squeeze test"}};
    shelf.put(mine);
    const ResolvedMix mix = resolve(crumb_and_maize(), shelf);
    const double hand = variance(0.12) - variance(0.05), memory = variance(0.09);
    const double bag = 0.065 * std::sqrt(variance(0.15)) * 1.78 / 0.935 / 0.78;
    const double all = hand + memory + variance(0.15) + bag * bag;
    REQUIRE(mix.hand.learned);
    CHECK(mix.hand.log_hand == Approx(hand / all * std::log(1.2)).epsilon(1e-9));
    CHECK(mix.hand.log_memory == Approx(memory / all * std::log(1.2)).epsilon(1e-9));
    CHECK(mix.hand.hand_variance == Approx(hand - hand * hand / all).epsilon(1e-9));
    CHECK(mix.hand.covariance == Approx(-hand * memory / all).epsilon(1e-9));
    const double shift = std::exp((hand + memory) / all * std::log(1.2));
    const WaterMarks maize = known_marks(mix.solids[1], mix.hand), own = known_marks(mix.solids[0], mix.hand);
    CHECK(maize.absorption == Approx(0.42 * shift));
    CHECK(maize.slump == Approx(0.72 * shift));
    CHECK(own.absorption == 0.78);
    CHECK(own.slump == Approx(0.78 + 0.47 * shift));  // the usual gap
}

// The formula of a common hand: ln P ~ N(sum(r/s^2)/L, 1/L), L = 1/sP^2 + sum(1/s^2). Source: conjugate normal prior.
TEST_CASE("without a shared error the hand is the weighted mean of what the bags say") {
    MemoryShelf shelf(&draft::shelf());
    double sum = 0, weights = 1 / (variance(0.12) - variance(0.05));
    for (const auto& [name, measured_at] : {std::pair("brown crumb", 0.7), std::pair("maize meal", 0.48)}) {
        Ingredient usual = draft::shelf().ingredient(name);
        usual.absorption.source = {Origin::published, "a table"};
        usual.moisture.spread = 0.0;
        shelf.put(usual);
        const double r = std::log(measured_at / usual.absorption.value);
        sum += r / variance(0.15);
        weights += 1 / variance(0.15);
        usual.absorption = {measured_at, 0.05, {Origin::measured, "squeeze test"}};
        shelf.put(usual);
    }
    const Hand hand = resolve(crumb_and_maize(), shelf).hand;
    CHECK(hand.log_hand == Approx(sum / weights).epsilon(1e-9));
    CHECK(hand.hand_variance == Approx(1 / weights).epsilon(1e-9));
    CHECK(hand.log_memory == 0);
    CHECK(hand.memory_variance == Approx(variance(0.09)));
}

TEST_CASE("a measurement stated to lie far apart teaches less") {
    const auto learned_from = [](double spread) {
        MemoryShelf shelf(&draft::shelf());
        shelf.put(measured(crumb(), 0.8, 1.4, spread));
        return resolve(crumb_and_maize(), shelf).hand.log_hand;
    };
    CHECK(learned_from(0.05) > 0.01);
    CHECK(learned_from(0.02) == learned_from(0.05));  // the day's 5 % is in both
    CHECK(learned_from(0.20) < 0.8 * learned_from(0.05));
}

// A bag found at 10 % that takes what a bag of 6.5 % takes by the equation of the same total water tells of no hand.
TEST_CASE("a damp bag that takes as much as its moisture says teaches nothing but that the hand is usual") {
    MemoryShelf shelf(&draft::shelf());
    const WaterMarks damp = marks_at_moisture({0.65, 1.12}, 0.065, 0.10);
    Ingredient mine = measured(crumb(), damp.absorption, damp.slump);
    mine.moisture = {0.10, 0.05, {Origin::measured, "dried and weighed"}};
    shelf.put(mine);
    const Hand hand = resolve(crumb_and_maize(), shelf).hand;
    CHECK(hand.learned);
    CHECK(hand.log_hand == Approx(0).margin(1e-12));
    CHECK(hand.hand_variance < variance(0.12) - variance(0.05));
}

TEST_CASE("a measured bag whose usual values nobody knows teaches nothing") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient mine = measured(crumb(), 0.8, 1.4);
    mine.name = "crumb of my own";
    shelf.put(mine);
    CHECK_FALSE(resolve(draft::mix_of("own", {{"crumb of my own", 1}}), shelf).hand.learned);
}
