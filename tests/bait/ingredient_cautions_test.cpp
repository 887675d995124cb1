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
