#include "bait/uptake.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "bait/random_mixes.h"

using namespace baitwright;

namespace {

const Temperature mild = Temperature::from_celsius(15);

MixUptake uptake_of(const Recipe& recipe, Temperature water = mild) {
    return MixUptake(resolve(recipe, draft::shelf()), water);
}

}  // namespace

// Section 3.2 of the method: t90 is the time to nine tenths, at 15 degC; 0.183 rounds the root 0.182985 of Crank's
// series.
TEST_CASE("one ingredient has drunk nine tenths after its own time") {
    const MixUptake crumb = uptake_of(draft::crumb_mix());
    CHECK(crumb.share_taken(8.0 * minute) == Approx(0.9).epsilon(1e-4));
    CHECK(crumb.time_to(0.9).in(minute) == Approx(8.0 * 0.182985 / 0.183).epsilon(1e-5));
    CHECK(crumb.share_taken(Time{}) == 0.0);
}

// Arrhenius by hand: exp(-35000/8.314462618 x (1/278.15 - 1/288.15)) = 0.59143, so 5 degC takes 1.6908 times as long.
TEST_CASE("cold water is drunk more slowly") {
    const double slower = std::exp(35000 / 8.314462618 * (1 / 278.15 - 1 / 288.15));
    CHECK(slower == Approx(1.6908).epsilon(1e-4));
    CHECK(uptake_of(draft::crumb_mix(), Temperature::from_celsius(5)).time_to(0.9).in(minute) ==
          Approx(8 * slower).epsilon(1e-4));
}

// By hand: crumb 0.65 g/g in 8 min, fishmeal 0.50 in 25 min, half and half. After 8 min the crumb has F(0.183) = 0.9 of
// its own, the fishmeal F(0.183 x 8/25 = 0.05856) = 6 sqrt(0.05856/pi) - 3 x 0.05856 = 0.6435 of its.
TEST_CASE("a mix drinks as its parts do, each by its own share of the absorption") {
    const MixUptake mix = uptake_of(draft::mix_of("half", {{"brown crumb", 1}, {"fishmeal, brown", 1}}));
    const double of_meal = 6 * std::sqrt(0.05856 / 3.14159265358979) - 3 * 0.05856;
    CHECK(mix.share_taken(8.0 * minute) == Approx((0.65 * 0.9 + 0.50 * of_meal) / 1.15).epsilon(1e-4));
}

TEST_CASE("soaked pellets and live feed take no part in drinking") {
    Recipe recipe = draft::mix_of("carried", {{"brown crumb", 1}, {"maggots", 5}, {"fishmeal pellet 8 mm", 5}});
    recipe.parts.back().prepare = Preparation::soaked;
    CHECK(uptake_of(recipe).time_to(0.9).in(minute) == Approx(8).epsilon(1e-3));
}

TEST_CASE("where nothing drinks, all is drunk at once") {
    const MixUptake maggots = uptake_of(draft::mix_of("maggots", {{"maggots", 1}}));
    CHECK(maggots.share_taken(Time{}) == 1.0);
    CHECK(maggots.time_to(0.9) == Time{});
}

TEST_CASE("a mix drinks ever more, and asking the time of a share gives it back") {
    CHECK(rc::check([] {
        const ResolvedMix mix = draft::drawn_mix(draft::Extras::all);
        const MixUptake uptake(mix, Temperature::from_celsius(draft::drawn(0, 30, 1)));
        const double share = draft::drawn(1, 99, 0.01);
        const Time time = uptake.time_to(share);
        RC_ASSERT(std::abs(uptake.share_taken(time) - share) < 1e-7);
        RC_ASSERT(uptake.share_taken(1.01 * time) > uptake.share_taken(time));
        RC_ASSERT(uptake.share_taken(time) <= 1.0);
    }));
}

TEST_CASE("while it drinks a mix looks wetter than it will be, by the gap as it stands") {
    const WaterMarks settled{0.55, 0.93}, early = marks_after(settled, 0.4);
    CHECK(early.absorption == Approx(0.22));
    CHECK(early.slump == Approx(0.22 + 0.38));
    CHECK(wetness_at(early, 0.5) > wetness_at(settled, 0.5));
    CHECK(marks_after(settled, 1.0).slump == Approx(0.93));
}
