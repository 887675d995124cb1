// Every solid we ship: the density of what it is made of, of its grains and of a heap of them, and its dust, must agree
// with one another.
#include <catch2/catch.hpp>
#include <cmath>

#include "bait/skeleton_from_composition.h"
#include "library/open_library.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

std::vector<Ingredient> shipped_solids() {
    static const auto shelf = shipped_shelf();
    std::vector<Ingredient> solids;
    for (const std::string& name : shelf->ingredient_names())
        if (shelf->ingredient(name).kind != IngredientKind::liquid) solids.push_back(shelf->ingredient(name));
    return solids;
}

double grams_per_millilitre(const Property<Density>& density) {
    return density.value.in(gram_per_millilitre);
}

}  // namespace

// Source: Choi & Okos 1986 (see physics/food_density.h).
TEST_CASE("every shipped solid is as dense as what it is made of, within 4 %") {
    int tested = 0, measured = 0;
    for (const Ingredient& solid : shipped_solids()) {
        const auto composed = skeleton_from_composition(solid.composition, solid.moisture.value);
        if (!composed) continue;
        CAPTURE(solid.name, source_text(solid.skeleton_density.source));
        CHECK(composed->in(gram_per_millilitre) == Approx(grams_per_millilitre(solid.skeleton_density)).epsilon(0.04));
        measured += solid.skeleton_density.stated() ? 1 : 0;
        ++tested;
    }
    CHECK(tested >= 100);
    CHECK(measured >= 3);
}

// A grain that is not wet through has some pores: 2 to 13 % in grains (tests/reference/porosity.csv), more in crumbs.
TEST_CASE("no shipped grain is denser than its solid, and meals and pellets have pores") {
    for (const Ingredient& solid : shipped_solids()) {
        CAPTURE(solid.name);
        const double pores = 1 - solid.envelope_density.value / solid.skeleton_density.value;
        CHECK(pores >= 0);
        const bool crystal = solid.moisture.value < 0.02, wet = solid.kind == IngredientKind::particle;
        const bool mineral = solid.kind == IngredientKind::soil;
        if (!crystal && !wet && !mineral) CHECK(pores > 0.029);
        CHECK(solid.envelope_density.value > solid.loose_density.value);
    }
}

// The share of a log-normal of the stated median and spread; 4 % of dust that rubs off in the bag is ours.
TEST_CASE("every shipped solid has the fines of its own sizes, give or take 4 % of dust") {
    for (const Ingredient& solid : shipped_solids()) {
        CAPTURE(solid.name, solid.particle_size.value.in(millimetre), double(solid.particle_spread.value));
        const double finer =
            std::log(0.1 / solid.particle_size.value.in(millimetre)) / std::log(double(solid.particle_spread.value));
        CHECK(solid.fines.value == Approx(0.5 * std::erfc(-finer / std::sqrt(2.0))).epsilon(0).margin(0.0401));
    }
}

// The pores of a hook pellet that water can fill are no more than it has.
TEST_CASE("every shipped expander has the open pores that its densities leave room for") {
    int tested = 0;
    for (const Ingredient& solid : shipped_solids()) {
        if (solid.kind != IngredientKind::expander) continue;
        CAPTURE(solid.name);
        CHECK(solid.porosity.value ==
              Approx(1 - solid.envelope_density.value / solid.skeleton_density.value).epsilon(0).margin(0.005));
        ++tested;
    }
    CHECK(tested >= 5);
}
