#include "bait/soak_test.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "bait/draft_shelf.h"
#include "bait/soaked_batch.h"
#include "physics/diffusion_in_sphere.h"
#include "physics/soaked_grain.h"
#include "quantities/fault.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

Ingredient pellet() {
    return draft::shelf().ingredient("fishmeal pellet 4 mm");
}

SoakTest test_of(double dry, double minutes, double drained, double celsius = 15) {
    return {dry * gram, drained * gram, minutes * minute, Temperature::from_celsius(celsius)};
}

}  // namespace

// By hand: 185 g from 100 g is 0.85 g/g, less the film of 0.03.
TEST_CASE("a batch soaked through tells its capacity") {
    CHECK(capacity_of_test(100.0 * gram, 185.0 * gram) == Approx(0.82));
    CHECK_THROWS_AS(capacity_of_test(100.0 * gram, 102.0 * gram), InputError);
    CHECK_THROWS_AS(capacity_of_test(100.0 * gram, 1.5 * kilogram), InputError);
}

// Source: tests/reference/soaked_grain.csv: SciPy on the finite cylinder, 1.2 times as long as thick, at D t/a^2 =
// 0.021; a = 2 mm, t = 600 s.
TEST_CASE("a batch soaked by the clock tells its diffusivity") {
    double uptake = 0;
    for (const auto& row : reference::rows_in("soaked_grain.csv"))
        if (row.at("length_over_diameter") == "1.2" && row.at("fourier") == "0.021") uptake = std::stod(row.at("mean"));
    REQUIRE(uptake > 0);
    const Diffusivity found = diffusivity_of_test(pellet(), 0.8, test_of(100, 10, 100 * (1.03 + 0.8 * uptake)));
    CHECK(found.si() == Approx(0.021 * 4e-6 / 600).epsilon(1e-4));
}

TEST_CASE("a test in warm water tells the same pellet as one in cold") {
    CHECK(rc::check([] {
        const double celsius = *rc::gen::inRange(0, 40), minutes = *rc::gen::inRange(2, 60);
        const Diffusivity real = *rc::gen::inRange(5, 80) * 1e-11 * square_metre_per_second;
        const Temperature water = Temperature::from_celsius(celsius);
        const double faster = arrhenius_factor(pellet().activation_energy.value, water);
        const double uptake = grain_uptake({4.0 * millimetre, 4.8 * millimetre}, faster * real * (minutes * minute));
        RC_PRE(uptake < 0.98);
        const double drained = 100 * (1 + 0.8 * uptake + soaked_film);
        RC_ASSERT(std::abs(diffusivity_of_test(pellet(), 0.8, test_of(100, minutes, drained, celsius)) / real - 1) <
                  1e-6);
    }));
}

TEST_CASE("a test that tells nothing is refused") {
    CHECK_THROWS_AS(diffusivity_of_test(pellet(), 0.8, test_of(100, 10, 100)), InputError);
    CHECK_THROWS_AS(diffusivity_of_test(pellet(), 0.8, test_of(100, 10, 183)), InputError);
}
