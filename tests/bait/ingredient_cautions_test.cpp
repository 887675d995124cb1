#include "bait/ingredient_cautions.h"

#include <catch2/catch.hpp>

#include "bait/caution.h"
#include "bait/seeds.h"

using namespace baitwright;

namespace {

using Words = std::vector<std::string>;

Words told_of(IngredientKind kind, const Words& cautions) {
    return caution_words(draft::grain("it", "maize meal", kind, cautions));
}

}  // namespace

TEST_CASE("grains keep the words of their file") {
    CHECK(told_of(IngredientKind::seed, {"pulse", "hard seed", "nuts"}) == Words{"pulse", "hard seed", "nuts"});
    CHECK(told_of(IngredientKind::particle, {"pulse"}) == Words{"pulse"});
}

TEST_CASE("whole feed of which nothing was stated has allergens that nobody knows, and says so by its name") {
    for (const IngredientKind kind : {IngredientKind::seed, IngredientKind::particle}) {
        const auto sentences = caution_sentences(told_of(kind, {}));
        REQUIRE(sentences.size() == 1);
        CHECK(sentences.front() == "Allergens of it are not known here: find out, and name them on the tub.");
        CHECK(told_of(kind, {"no allergens"}).empty());
        CHECK(caution_sentences(told_of(kind, {"no allergens", "live"})).size() == 1);
    }
    CHECK(told_of(IngredientKind::base, {}).empty());
    const auto both = caution_sentences({allergens_not_known("a"), "nuts", allergens_not_known("b")});
    REQUIRE(both.size() == 2);
    CHECK_THAT(both.back(), Catch::Contains("of a and b are"));
}

TEST_CASE("nobody soaks and boils a meal: of pulses and nuts it is told as a meal, once, all else as it stands") {
    for (const IngredientKind kind : {IngredientKind::base, IngredientKind::powder, IngredientKind::pellet}) {
        CHECK(told_of(kind, {"pulse", "lupin", "dust"}) == Words{"raw meal", "lupin", "dust"});
        CHECK(told_of(kind, {"hard seed", "pulse", "raw meal"}) == Words{"raw meal"});
        CHECK(told_of(kind, {"gluten", "mould"}) == Words{"gluten", "mould"});
    }
    const auto sentences = caution_sentences(told_of(IngredientKind::base, {"pulse"}));
    REQUIRE(sentences.size() == 1);
    CHECK_THAT(sentences.front(), Catch::Contains("heat-treated or fit to eat raw") && !Catch::Contains("soak"));
}

TEST_CASE("an ingredient has the words of its file") {
    CHECK(has_caution(draft::seeds().ingredient("pea meal"), "pulse"));
    CHECK_FALSE(has_caution(draft::seeds().ingredient("pea meal"), "raw meal"));
}
