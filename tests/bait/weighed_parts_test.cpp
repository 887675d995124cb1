// What a logged mix was made of, and what a hand means by its feel.
#include "bait/weighed_parts.h"

#include <catch2/catch.hpp>
#include <memory>

#include "bait/memory_shelf.h"
#include "bait/resolve_mix.h"
#include "quantities/units.h"

using namespace baitwright;

namespace {

Property<Ratio> logged_mark(double value) {
    return {value, 0.1, {Origin::measured, ""}};
}

std::unique_ptr<MemoryShelf> shelf_of_three() {
    auto shelf = std::make_unique<MemoryShelf>();
    Ingredient crumb;
    crumb.name = "crumb";
    crumb.kind = IngredientKind::base;
    crumb.loose_density = {500.0 * gram_per_litre, 0.1, {Origin::measured, ""}};
    crumb.absorption = logged_mark(0.6);
    crumb.slump = logged_mark(1.2);
    Ingredient meal = crumb;
    meal.name = "meal";
    Ingredient treacle;
    treacle.name = "treacle";
    treacle.kind = IngredientKind::liquid;
    treacle.density = {1250.0 * gram_per_litre, 0.1, {Origin::measured, ""}};
    treacle.wetting = {500.0 * gram_per_litre, 0.1, {Origin::measured, ""}};
    for (const Ingredient& ingredient : {crumb, meal, treacle}) shelf->put(ingredient);
    shelf->put(std::vector<Feel>{{"dry", 0.7, 1.0, {}}, {"firm", 1.2, 1.3, {}}, {"soft", 1.7, 3.0, {}}});
    return shelf;
}

Recipe mix_of_two(std::vector<Dose> doses) {
    Recipe recipe;
    recipe.name = "two";
    recipe.feel = "firm";
    recipe.parts = {{"crumb", Share{3}}, {"meal", Share{1}}};
    recipe.doses = std::move(doses);
    return recipe;
}

LoggedMix weighed(Mass dry, Mass water) {
    LoggedMix logged;
    logged.of = "two";
    logged.dry = dry;
    logged.water = water;
    return logged;
}

}  // namespace

TEST_CASE("the parts that take water are the recipe's shares of the dry mass, with the moisture that was told") {
    const auto shelf = shelf_of_three();
    LoggedMix logged = weighed(800.0 * gram, 500.0 * gram);
    weigh_parts(logged, resolve(mix_of_two({}), *shelf), {{"Meal", 0.09}});
    REQUIRE(logged.parts.size() == 2);
    CHECK(logged.parts[0].of == "crumb");
    CHECK(logged.parts[0].mass.in(gram) == Approx(600));
    CHECK_FALSE(logged.parts[0].moisture);
    CHECK(logged.parts[1].mass.in(gram) == Approx(200));
    CHECK(double(*logged.parts[1].moisture) == Approx(0.09));
    CHECK(logged.wetting.in(gram) == Approx(0).margin(1e-9));
}

TEST_CASE("a dose by the water wets by what was poured, not by what the library asks for") {
    const auto shelf = shelf_of_three();
    const Dose dose{"treacle", {DoseBasis::per_litre_water, 100.0 * millilitre}};
    LoggedMix little = weighed(1000.0 * gram, 300.0 * gram), much = weighed(1000.0 * gram, 900.0 * gram);
    const ResolvedMix mix = resolve(mix_of_two({dose}), *shelf);
    weigh_parts(little, mix);
    weigh_parts(much, mix);
    // 100 ml a litre, each millilitre wetting as half a gram of water.
    CHECK(little.wetting.in(gram) == Approx(0.3 * 100 * 0.5));
    CHECK(much.wetting.in(gram) == Approx(0.9 * 100 * 0.5));
}

TEST_CASE("parts that were told are left as they are, and none are made up where the water was not told") {
    const auto shelf = shelf_of_three();
    const ResolvedMix mix = resolve(mix_of_two({}), *shelf);
    LoggedMix told = weighed(800.0 * gram, 500.0 * gram);
    told.parts.push_back({"meal", 800.0 * gram});
    weigh_parts(told, mix);
    CHECK(told.parts.size() == 1);
    LoggedMix dry_only;
    dry_only.dry = 800.0 * gram;
    weigh_parts(dry_only, mix);
    CHECK(dry_only.parts.empty());
}

TEST_CASE("a feel means its aim, read to a third of its band; what was told stays") {
    const std::vector<Feel> feels = shelf_of_three()->feels();
    LoggedMix firm;
    firm.feel = "Firm";
    read_feel(firm, feels);
    CHECK(double(*firm.wetness) == Approx(1.2));
    CHECK(double(firm.within) == Approx(0.1));
    LoggedMix closer;
    closer.feel = "firm";
    closer.wetness = 1.25;
    closer.within = 0.02;
    read_feel(closer, feels);
    CHECK(double(*closer.wetness) == Approx(1.25));
    CHECK(double(closer.within) == Approx(0.02));
    LoggedMix number;
    number.wetness = 1.1;
    read_feel(number, feels);
    CHECK(double(number.within) == Approx(0.1));
    LoggedMix unknown;
    unknown.feel = "like putty";
    read_feel(unknown, feels);
    CHECK_FALSE(unknown.wetness);
}
