#include "answers/mix/odd_mix.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "answers/asking.h"
#include "bait/resolve_mix.h"
#include "day_of.h"

using namespace baitwright;

namespace {

bool odd(Recipe recipe, const std::string& code, const Shelf& shelf = draft::shelf()) {
    const std::vector<Warning> found = oddities_of(resolve(recipe, shelf), draft::feels());
    return std::any_of(found.begin(), found.end(), [&](const Warning& one) { return one.code == code; });
}

/// Open crumb, full of air: the draft values of fresh liquidised bread (from memory).
Ingredient light_as_bread() {
    Ingredient bread = draft::shelf().ingredient("brown crumb");
    bread.name = "liquidised bread";
    bread.absorption.value = 0.15;
    bread.slump.value = 0.45;
    bread.loose_density.value = 190.0 * gram_per_litre;
    bread.envelope_density.value = 0.45 * gram_per_millilitre;
    bread.skeleton_density.value = 1.30 * gram_per_millilitre;
    return bread;
}

}  // namespace

TEST_CASE("a mix of liquidised bread floats, a fishmeal mix does not") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(light_as_bread());
    CHECK(odd(draft::mix_of("bread", {{"liquidised bread", 1}}), "floats", shelf));
    CHECK_FALSE(odd(draft::fishmeal_mix(), "floats"));
}

TEST_CASE("more than half dust is odd") {
    CHECK(odd(draft::mix_of("flour", {{"wheat flour", 9}, {"brown crumb", 1}}), "mostly-fines"));
    CHECK_FALSE(odd(draft::fishmeal_mix(), "mostly-fines"));
}

// By hand: flour of which 80 % is dust and crumb of which 10 % is, 4 to 1: 66 %.
TEST_CASE("how much of a mix is dust is told in whole percents") {
    MemoryShelf shelf(&draft::shelf());
    for (const auto& [name, fines] : {std::pair{"wheat flour", 0.8}, {"brown crumb", 0.1}}) {
        Ingredient ingredient = draft::shelf().ingredient(name);
        ingredient.fines.value = fines;
        shelf.put(ingredient);
    }
    const Recipe dusty = draft::mix_of("dusty", {{"wheat flour", 4}, {"brown crumb", 1}});
    const std::vector<Warning> found = oddities_of(resolve(dusty, shelf), draft::feels());
    const auto mostly =
        std::find_if(found.begin(), found.end(), [](const Warning& one) { return one.code == "mostly-fines"; });
    REQUIRE(mostly != found.end());
    CHECK_THAT(mostly->message, Catch::StartsWith("66 % of it is dust"));
}

TEST_CASE("a ball of what breaks up is odd, a crumbly mix of it is not") {
    Recipe lively = draft::mix_of("lively", {{"ground hemp, toasted", 1}, {"wheat bran", 1}});
    lively.feel = "firm";
    CHECK(odd(lively, "breaks-up"));
    lively.feel = "crumbly";
    CHECK_FALSE(odd(lively, "breaks-up"));
}

// By hand: the lively parts come to -2.25; 0.4 g of molasses at +5 for each gram lifts that to -0.25.
TEST_CASE("a liquid that binds holds together what breaks up alone, as a part or as a dose") {
    Recipe lively = draft::mix_of("lively", {{"ground hemp, toasted", 1}, {"wheat bran", 1}, {"molasses", 0.8}});
    lively.feel = "firm";
    CHECK_FALSE(odd(lively, "breaks-up"));
    lively.parts.back().amount = Share{0.2};  // -1.75
    CHECK(odd(lively, "breaks-up"));
    lively.doses = {{"molasses", parse_dose_rate("300 g per kg dry")}};  // -0.25
    CHECK_FALSE(odd(lively, "breaks-up"));
}

TEST_CASE("what the answer for a kilogram warns of is odd as well") {
    MemoryShelf shelf(&draft::shelf());
    const auto sell = [&](const char* name, const char* currency) {
        Ingredient ingredient = draft::shelf().ingredient(name);
        ingredient.packs = {{1.0 * kilogram, Money(200, currency_named(currency)), day_of("2026-03-01"), {}}};
        ingredient.label_dose = parse_dose_rate("1 g per kg dry");
        shelf.put(ingredient);
    };
    sell("brown crumb", "GBP");
    sell("maize meal", "EUR");
    sell("salt", "GBP");
    const Recipe two = draft::mix_of("two prices", {{"brown crumb", 1}, {"maize meal", 1}});
    CHECK(odd(two, "other-currency", shelf));
    Recipe salted = draft::mix_of("salted", {{"brown crumb", 1}});
    CHECK_FALSE(odd(salted, "other-currency", shelf));
    CHECK_FALSE(odd(salted, "no-price", shelf));
    CHECK_FALSE(odd(salted, "over-label", shelf));
    salted.doses = {{"salt", parse_dose_rate("2 g per kg dry")}};
    CHECK(odd(salted, "over-label", shelf));
    CHECK(odd(draft::crumb_mix(), "no-price"));
    CHECK(odd(draft::mix_of("syrup", {{"brown crumb", 1}, {"molasses", 2}}), "too-wet"));
    CHECK_FALSE(odd(draft::crumb_mix(), "too-wet"));
}

TEST_CASE("ten times the usual dose is odd, the usual is not") {
    Recipe recipe = draft::fishmeal_mix();
    recipe.doses = {{"salt", parse_dose_rate("15 %")}};
    CHECK(odd(recipe, "big-dose"));
    recipe.doses = {{"salt", parse_dose_rate("1 %")}};
    CHECK_FALSE(odd(recipe, "big-dose"));
}

TEST_CASE("hook pellets and pinches are odd in a groundbait") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient hook;
    hook.name = "hook expander";
    hook.kind = IngredientKind::expander;
    hook.loose_density = {360.0 * gram_per_litre, 0.1, {Origin::standing, "from memory"}};
    hook.diameter = {4.0 * millimetre, 0.05, {Origin::standing, "from memory"}};
    hook.porosity = {0.5, 0.1, {Origin::standing, "from memory"}};
    shelf.put(hook);
    CHECK(odd(draft::mix_of("hook", {{"brown crumb", 1}, {"hook expander", 1}}), "hook-pellet", shelf));
    CHECK(odd(draft::mix_of("pinch", {{"brown crumb", 999}, {"salt", 1}}), "tiny-part"));
}
