#include "answers/mix/answer_mix.h"

#include <catch2/catch.hpp>

#include "answers/asking.h"
#include "bait/free_offerings.h"
#include "bait/seeds.h"
#include "quantities/fault_of.h"

using namespace baitwright;
using draft::request_for;

namespace {

MixAnswer answered(const Recipe& recipe, const Shelf& shelf = draft::shelf()) {
    return answer_mix(shelf, recipe, request_for(DryMass{1.0 * kilogram}, "firm"));
}

}  // namespace

TEST_CASE("the answer carries its range of water and the name of its recipe") {
    const MixAnswer answer = answered(draft::fishmeal_mix());
    CHECK(answer.recipe == "fishmeal mix");
    REQUIRE(answer.doubt.has_value());
    CHECK(answer.doubt->water.low < answer.water_to_add);
    CHECK(answer.doubt->water.high > answer.water_to_add);
}

TEST_CASE("the cautions of parts, liquids and doses are gathered, each once") {
    MemoryShelf shelf(&draft::shelf());
    const auto careful = [&](const char* name, std::vector<std::string> words) {
        Ingredient ingredient = draft::shelf().ingredient(name);
        ingredient.cautions = std::move(words);
        shelf.put(ingredient);
    };
    careful("fishmeal, brown", {"fish", "dust"});
    careful("brown crumb", {"gluten", "dust"});
    careful("molasses", {"sulphites"});
    careful("betaine powder", {"dust"});
    Recipe recipe = draft::fishmeal_mix();
    recipe.parts.push_back({"molasses", Share{0.5}});
    recipe.doses.push_back({"betaine powder", parse_dose_rate("1 %")});
    const MixAnswer answer = answered(recipe, shelf);
    REQUIRE(answer.cautions.size() == 2);
    CHECK_THAT(answer.cautions[0], Catch::StartsWith("Fine dust"));
    CHECK_THAT(answer.cautions[1], Catch::Contains("holds fish, gluten, sulphites;"));
}

TEST_CASE("a meal of pulses is to be looked at on its bag, and cooked pulses keep the caution of their cooking") {
    const auto meal = answered(draft::mix_of("meal", {{"brown crumb", 1}, {"pea meal", 1}}), draft::seeds()).cautions;
    REQUIRE(meal.size() == 2);
    CHECK_THAT(meal[0], Catch::Contains("heat-treated or fit to eat raw"));
    CHECK_THAT(meal[1], Catch::StartsWith("Fine dust"));
    const auto cooked = draft::mix_of("cooked", {{"brown crumb", 1}, {"cooked maple peas", 1}});
    CHECK_THAT(answered(cooked, draft::seeds()).cautions.at(0), Catch::StartsWith("Pulses: soak"));
}

TEST_CASE("raw seed is not added for once, cooked feed is") {
    MixRequest request = request_for(DryMass{1.0 * kilogram}, "firm");
    const auto with = [&](const char* name) {
        request.once.with = {{name, 100.0 * gram}};
        return answer_mix(draft::seeds(), draft::fishmeal_mix(), request);
    };
    CHECK(fault_of([&] { (void)with("maple peas, dry"); }).code == "cook-first");
    CHECK_THROWS_AS(with("pearl millet"), UsageError);
    CHECK(with("cooked maple peas").parts.back().name == "cooked maple peas");
    CHECK(with("pea meal").parts.back().name == "pea meal");
}

TEST_CASE("free offerings are those of the parts that fish pick up one by one") {
    const MixAnswer answer = answered(draft::mix_of("mixed", {{"brown crumb", 1}, {"fishmeal pellet 4 mm", 1}}));
    CHECK(answer.parts[0].free_offerings == 0);
    CHECK(answer.free_offerings ==
          Approx(free_offerings_in(draft::shelf().ingredient("fishmeal pellet 4 mm"), 500.0 * gram)));
}

TEST_CASE("a recipe that cannot be opened up is refused as it is when resolved") {
    CHECK_THROWS_AS(answered(draft::mix_of("bad", {{"no such thing", 1}})), InputError);
}
