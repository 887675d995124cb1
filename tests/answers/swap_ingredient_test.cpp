#include "answers/blend/swap_ingredient.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "answers/asking.h"
#include "bait/seeds.h"
#include "bait/wetted_mix.h"
#include "quantities/fault_of.h"
#include "solver/clp_solver.h"

namespace baitwright {

namespace {

SwapRequest without(std::vector<std::string> names) {
    SwapRequest request;
    request.without = std::move(names);
    return request;
}

SwapAnswer swapped(const Recipe& recipe, const SwapRequest& request, const Shelf& shelf = draft::shelf()) {
    ClpSolver solver;
    return swap_ingredient(shelf, recipe, request, solver);
}

Fault refused(const Recipe& recipe, const SwapRequest& request) {
    return fault_of([&] { swapped(recipe, request); });
}

std::vector<SwapShare> all_in(const SwapAnswer& answer) {
    std::vector<SwapShare> all = answer.stand_ins;
    all.insert(all.end(), answer.rest.begin(), answer.rest.end());
    return all;
}

}  // namespace

TEST_CASE("what ran out is never in the match, and the rest keeps its shares") {
    const Recipe recipe = draft::fishmeal_mix();
    for (const Part& part : recipe.parts) {
        CAPTURE(part.of);
        const SwapAnswer answer = swapped(recipe, without({part.of}));
        double sum = 0;
        for (const SwapShare& share : all_in(answer)) {
            CHECK(share.name != part.of);
            sum += share.is;
        }
        CHECK(sum == Approx(1));
        CHECK(answer.stand_ins.size() <= 2);
        REQUIRE(answer.gone.size() == 1);
        CHECK(answer.gone[0].name == part.of);
        CHECK(answer.rest.size() == recipe.parts.size() - 1);
        for (const SwapShare& share : answer.rest) CHECK(share.is == Approx(double(share.was)));
        CHECK(answer.least_distance <= answer.distance + 1e-9);
    }
}

TEST_CASE("two that ran out are both left out") {
    const SwapAnswer answer = swapped(draft::fishmeal_mix(), without({"brown crumb", "Maize Meal"}));
    for (const SwapShare& share : all_in(answer)) CHECK((share.name != "brown crumb" && share.name != "maize meal"));
    CHECK(answer.gone.size() == 2);
}

TEST_CASE("a twin of what ran out stands in for all of it and changes nothing") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient twin = draft::shelf().ingredient("fishmeal, brown");
    twin.name = "another fishmeal";
    shelf.put(twin);
    const SwapAnswer answer = swapped(draft::fishmeal_mix(), without({"fishmeal, brown"}), shelf);
    REQUIRE(answer.stand_ins.size() == 1);
    CHECK(answer.stand_ins[0].name == "another fishmeal");
    CHECK(answer.stand_ins[0].is == Approx(0.4));
    CHECK(answer.distance == Approx(0).margin(1e-6));
    CHECK(double(answer.water_is) == Approx(double(answer.water_was)));
    CHECK(answer.hold == Approx(1));
    CHECK(answer.feel_of_old_water == "firm");
}

TEST_CASE("the rest moves by no more than it may, and then the match is no worse") {
    SwapRequest request = without({"fishmeal, brown"});
    const double kept = swapped(draft::fishmeal_mix(), request).least_distance;
    request.rest_may_move = 0.1;
    const SwapAnswer answer = swapped(draft::fishmeal_mix(), request);
    for (const SwapShare& share : answer.rest) CHECK(std::abs(share.is / share.was - 1) <= 0.1 + 1e-6);
    CHECK(answer.least_distance <= kept + 1e-6);
}

TEST_CASE("only what is named may stand in where only that is at hand") {
    SwapRequest request = without({"fishmeal, brown"});
    request.from = std::vector<std::string>{"rusk", "Crustacean Meal"};
    for (const SwapShare& share : swapped(draft::fishmeal_mix(), request).stand_ins)
        CHECK((share.name == "rusk" || share.name == "crustacean meal"));
    request.from = std::vector<std::string>{"fishmeal, brown", "casters", "brown crumb"};
    const Fault fault = refused(draft::fishmeal_mix(), request);
    CHECK(fault.code == "nothing-to-swap-in");
    CHECK(fault.message.find("the shed holds nothing of its sort") != std::string::npos);
}

TEST_CASE("the water told is what the changed mix takes") {
    const SwapAnswer answer = swapped(draft::fishmeal_mix(), without({"fishmeal, brown"}));
    REQUIRE(answer.changed);
    CHECK(draft::kilo(draft::fishmeal_mix(), "firm").water_to_add.in(gram) == Approx(1000 * double(answer.water_was)));
    CHECK(draft::kilo(*answer.changed, "firm").water_to_add.in(gram) == Approx(1000 * double(answer.water_is)));
    for (const Part& part : answer.changed->parts) CHECK(part.of != "fishmeal, brown");
}

TEST_CASE("a ball holds longer by the binder of the mix") {
    const SwapAnswer answer = swapped(draft::fishmeal_mix(), without({"fishmeal, brown"}));
    for (const SwapChange& change : answer.changes)
        if (change.name == "binder") CHECK(answer.hold == Approx(std::exp(change.is - change.was)));
}

TEST_CASE("what is not in the mix is refused with what may be meant") {
    const Fault fault = refused(draft::fishmeal_mix(), without({"fishmeal, brwn"}));
    CHECK(fault.code == "not-in-the-mix");
    CHECK(fault.hint.find("fishmeal, brown") != std::string::npos);
    Recipe sweet = draft::fishmeal_mix();
    sweet.parts.push_back({"molasses", 50.0 * gram, {}});
    for (Part& part : sweet.parts) part.amount = 100.0 * gram;
    CHECK(refused(sweet, without({"molasses"})).code == "not-a-dry-part");
}

TEST_CASE("raw seed stands in for nothing") {
    MemoryShelf shelf(&draft::seeds());
    shelf.put(draft::grain("soft grains", "maize meal", IngredientKind::seed, {}));
    const Recipe recipe = draft::mix_of("grains", {{"brown crumb", 1}, {"soft grains", 1}});
    const SwapAnswer answer = swapped(recipe, without({"soft grains"}), shelf);
    REQUIRE(answer.stand_ins.size() == 1);
    CHECK(answer.stand_ins[0].name == "sesame");
}

TEST_CASE("what a swap brings in of meals is told as of meals") {
    MemoryShelf shelf(&draft::seeds());
    shelf.put(draft::grain("maize meal", "maize meal", IngredientKind::base, {"dust"}));
    const SwapAnswer answer =
        swapped(draft::mix_of("maize", {{"brown crumb", 1}, {"maize meal", 1}}), without({"maize meal"}), shelf);
    REQUIRE(answer.stand_ins.size() == 1);
    CHECK(answer.stand_ins[0].name == "pea meal");  // the same but for its name
    CHECK(answer.new_cautions == std::vector<std::string>{"raw meal"});
}

TEST_CASE("both mixes of a swap are priced in one currency, and what that leaves out is named") {
    const Recipe recipe = draft::fishmeal_mix();
    MemoryShelf shelf(&draft::shelf());
    for (const std::string& name : draft::shelf().ingredient_names()) {
        Ingredient ingredient = draft::shelf().ingredient(name);
        const char* price = name == recipe.parts[0].of ? "€2.00" : "£2.00";
        ingredient.packs = {{1.0 * kilogram, parse_money(price), std::nullopt, {}}};
        shelf.put(ingredient);
    }
    const SwapAnswer answer = swapped(recipe, without({recipe.parts[0].of}), shelf);
    CHECK(answer.currency->code == "GBP");
    CHECK_FALSE(answer.price_was);
    CHECK(answer.price_is.value() == Approx(200));
    REQUIRE(answer.warnings.size() == 1);
    CHECK(answer.warnings[0].code == "other-currency");
    CHECK_FALSE(answer.warnings[0].answer_is_no);
    CHECK_THAT(answer.warnings[0].message, Catch::Contains(recipe.parts[0].of + " (€2.00)"));
}

TEST_CASE("pellets alone are compared soaked, and are written as the recipe had them") {
    const SwapAnswer answer = swapped(draft::micro_mix(), without({"fishmeal micro pellet 2 mm"}));
    CHECK(answer.soaked_alone);
    CHECK(answer.feel == "soaked");
    const MixAnswer kilo = answer_mix(draft::shelf(), draft::micro_mix(), draft::request_for(DryMass{1.0 * kilogram}));
    CHECK(double(answer.water_was) == Approx(kilo.wet_mass / kilo.dry_mass - 1).epsilon(1e-9));
    for (const SwapChange& change : answer.changes) CHECK(change.name != "absorption");
    REQUIRE(answer.changed);
    for (const Part& part : answer.changed->parts) CHECK(part.prepare == Preparation::as_bought);
    CHECK_FALSE(swapped(draft::fishmeal_mix(), without({"brown crumb"})).soaked_alone);
}

}  // namespace baitwright
