#include "answers/blend/likeness.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <set>

#include "bait/draft_shelf.h"

namespace baitwright {

namespace {

std::size_t place_of(std::string_view name) {
    for (std::size_t k = 0; k < likeness_aspects().size(); ++k)
        if (likeness_aspects()[k].name == name) return k;
    FAIL("no aspect " << name);
    return 0;
}

}  // namespace

TEST_CASE("every aspect has a step above nothing and a name of its own") {
    std::set<std::string_view> names;
    for (const LikenessAspect& aspect : likeness_aspects()) {
        CHECK(aspect.step > 0);
        CHECK(names.insert(aspect.name).second);
    }
}

TEST_CASE("twice as large is as far as half as large") {
    const auto size = [](double millimetres) {
        Ingredient ingredient = draft::shelf().ingredient("brown crumb");
        ingredient.particle_size = draft::stated(millimetres * millimetre);
        return likeness_terms(ingredient, Preparation::as_bought).at(place_of("grain size")).value().amount;
    };
    CHECK(size(2) - size(1) == Approx(size(1) - size(0.5)));
    CHECK(size(2) - size(1) == Approx(std::log(2.0)));
}

TEST_CASE("a soaked part says nothing of the water, and an unknown colour nothing of colour") {
    Ingredient pellet = draft::shelf().ingredient("fishmeal micro pellet 2 mm");
    const auto soaked = likeness_terms(pellet, Preparation::soaked),
               dry = likeness_terms(pellet, Preparation::as_bought);
    CHECK(soaked[place_of("absorption")].value().weight == 0);
    CHECK(dry[place_of("absorption")].value().amount == Approx(0.38));
    CHECK_FALSE(dry[place_of("lightness")]);
    pellet.colour = "Brown";
    CHECK(likeness_terms(pellet, Preparation::as_bought)[place_of("lightness")].has_value());
}

}  // namespace baitwright
