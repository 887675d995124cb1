#include "bait/resolve_mix.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "bait/random_mixes.h"
#include "bait/seeds.h"
#include "quantities/fault.h"

using namespace baitwright;
using draft::mix_of;

namespace {

std::vector<Fault> faults_of_mix(const Recipe& recipe, const Shelf& shelf = draft::shelf()) {
    try {
        (void)resolve(recipe, shelf);
    } catch (const InputError& error) {
        return error.faults();
    }
    return {};
}

std::vector<std::string> codes_of(const Recipe& recipe, const Shelf& shelf = draft::shelf()) {
    std::vector<std::string> codes;
    for (const Fault& fault : faults_of_mix(recipe, shelf)) codes.push_back(fault.code);
    return codes;
}

using Codes = std::vector<std::string>;

Recipe recipe(std::string name, std::vector<Part> parts, std::vector<Dose> doses = {}) {
    Recipe r;
    r.name = std::move(name);
    r.parts = std::move(parts);
    r.doses = std::move(doses);
    return r;
}

double share_of(const ResolvedMix& mix, const std::string& name) {
    double share = 0;
    for (const SolidPart& part : mix.solids)
        if (part.ingredient.name == name) share += part.share;
    return share;
}

}  // namespace

// By hand: 400 g, 1 l of crumb at 420 g/l, 2 packs of 0.5 kg: 400 + 420 + 1000 = 1820 g.
TEST_CASE("mass, loose volume and whole packs all become mass") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient meal = draft::shelf().ingredient("maize meal");
    meal.packs = {{0.5 * kilogram, {}, {}, {}}};
    shelf.put(meal);
    const ResolvedMix mix = resolve(
        recipe("mixed",
               {{"fishmeal, brown", 400.0 * gram}, {"brown crumb", 1.0 * litre}, {"maize meal", WholePacks{2}}}),
        shelf);
    CHECK(mix.as_written.in(gram) == Approx(1820));
    CHECK(share_of(mix, "fishmeal, brown") == Approx(400.0 / 1820));
    CHECK(share_of(mix, "brown crumb") == Approx(420.0 / 1820));
    CHECK(share_of(mix, "maize meal") == Approx(1000.0 / 1820));
}

TEST_CASE("packs by volume hold their loose mass, and those of a liquid its own") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient crumb = draft::shelf().ingredient("brown crumb"), molasses = draft::shelf().ingredient("molasses");
    crumb.packs = {{2.0 * litre, {}, {}, {}}};
    molasses.packs = {{250.0 * millilitre, {}, {}, {}}};
    shelf.put(crumb);
    shelf.put(molasses);
    const ResolvedMix mix =
        resolve(recipe("packs", {{"brown crumb", WholePacks{1}}, {"molasses", WholePacks{2}}}), shelf);
    CHECK(mix.as_written.in(gram) == Approx(840));
    REQUIRE(mix.liquids.size() == 1);
    CHECK(mix.liquids.front().per_dry == Approx(700.0 / 840));
}

TEST_CASE("a mix of shares has no size of its own") {
    const ResolvedMix mix = resolve(draft::fishmeal_mix(), draft::shelf());
    CHECK(mix.as_written == Mass{});
    CHECK(share_of(mix, "fishmeal, brown") == Approx(0.4));
    CHECK(share_of(mix, "maize meal") == Approx(0.1));
}

TEST_CASE("the shares of the solids sum to one, whatever liquids come with them") {
    CHECK(rc::check([] {
        const ResolvedMix mix = draft::drawn_mix(draft::Extras::all);
        double sum = 0;
        for (const SolidPart& part : mix.solids) sum += part.share;
        RC_ASSERT(std::abs(sum - 1) < 1e-12);
    }));
}

TEST_CASE("multiplying every share by one number changes nothing") {
    CHECK(rc::check([] {
        Recipe once = draft::drawn_recipe(draft::Extras::all);
        const ResolvedMix before = resolve(once, draft::shelf());
        for (Part& part : once.parts) std::get<Share>(part.amount).parts *= 7;
        const ResolvedMix after = resolve(once, draft::shelf());
        RC_ASSERT(before.solids.size() == after.solids.size());
        for (std::size_t i = 0; i < before.solids.size(); ++i)
            RC_ASSERT(std::abs(before.solids[i].share - after.solids[i].share) < 1e-12);
        for (std::size_t i = 0; i < before.liquids.size(); ++i)
            RC_ASSERT(std::abs(before.liquids[i].per_dry / after.liquids[i].per_dry - 1) < 1e-12);
    }));
}

TEST_CASE("an ingredient named twice is one part, but soaked and dry stay apart") {
    const ResolvedMix mix =
        resolve(recipe("twice", {{"fishmeal micro pellet 2 mm", 100.0 * gram},
                                 {"Fishmeal micro pellet 2 mm", 200.0 * gram},
                                 {"fishmeal micro pellet 2 mm", 300.0 * gram, Preparation::soaked}}),
                draft::shelf());
    REQUIRE(mix.solids.size() == 2);
    CHECK(mix.solids[0].share == Approx(0.5));
    CHECK(mix.solids[1].share == Approx(0.5));
    CHECK(mix.solids[1].prepare == Preparation::soaked);
}

// By hand: 1 kg of an inner mix of 3 crumb and 1 meal with 50 g of molasses per 100 g of it, and 500 g of meal:
// 750 g crumb, 250 + 500 g meal, 500 g molasses, on 1500 g dry.
TEST_CASE("a recipe in a recipe brings its parts, liquids and doses in proportion") {
    MemoryShelf shelf(&draft::shelf());
    Recipe inner = mix_of("inner", {{"brown crumb", 3}, {"maize meal", 1}, {"molasses", 2}});
    inner.doses.push_back({"salt", {DoseBasis::share_of_dry, 20.0 * gram}});
    shelf.put(inner);
    const ResolvedMix mix = resolve(recipe("outer", {{"inner", 1.0 * kilogram}, {"maize meal", 500.0 * gram}}), shelf);
    CHECK(mix.as_written.in(gram) == Approx(1500));
    CHECK(share_of(mix, "brown crumb") == Approx(0.5));
    CHECK(share_of(mix, "maize meal") == Approx(0.5));
    CHECK(mix.liquids.front().per_dry == Approx(500.0 / 1500));
    REQUIRE(mix.doses.size() == 1);
    CHECK(mix.doses.front().reach == Approx(1000.0 / 1500));
}

TEST_CASE("a recipe in a recipe by volume is as much as fills that volume dry") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(mix_of("only crumb", {{"brown crumb", 1}}));
    const ResolvedMix mix = resolve(recipe("outer", {{"only crumb", 2.0 * litre}, {"maize meal", 1.0 * litre}}), shelf);
    CHECK(mix.as_written.in(gram) == Approx(2 * 420 + 620).epsilon(1e-12));
}

TEST_CASE("recipes that end up inside themselves are refused, wherever the round closes") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(mix_of("a", {{"b", 1}}));
    shelf.put(mix_of("b", {{"c", 1}}));
    shelf.put(mix_of("c", {{"a", 1}}));
    shelf.put(mix_of("self", {{"brown crumb", 1}, {"Self", 1}}));
    for (const char* name : {"a", "b", "c", "self"}) CHECK(codes_of(shelf.recipe(name), shelf) == Codes{"cycle"});
}

TEST_CASE("one recipe used twice side by side is no cycle") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(mix_of("base", {{"brown crumb", 1}}));
    shelf.put(mix_of("left", {{"base", 1}}));
    const ResolvedMix mix = resolve(mix_of("both", {{"base", 1}, {"left", 1}}), shelf);
    CHECK(mix.solids.size() == 1);
}

TEST_CASE("recipes may lie eight deep and not deeper") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(mix_of("1", {{"brown crumb", 1}}));
    for (int level = 2; level <= 9; ++level) shelf.put(mix_of(std::to_string(level), {{std::to_string(level - 1), 1}}));
    CHECK(codes_of(shelf.recipe("8"), shelf).empty());
    CHECK(codes_of(shelf.recipe("9"), shelf) == Codes{"too-deep"});
}

TEST_CASE("five hundred recipes may be opened for one mix, and the one too many is told once") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(mix_of("base", {{"brown crumb", 1}}));
    const auto mix_of_bases = [](std::size_t count) {
        return mix_of("many", std::vector<std::pair<std::string, double>>(count, {"base", 1}));
    };
    CHECK(codes_of(mix_of_bases(500), shelf).empty());
    CHECK(codes_of(mix_of_bases(501), shelf) == Codes{"too-many-mixes"});
    CHECK(codes_of(mix_of_bases(600), shelf) == Codes{"too-many-mixes"});
}

TEST_CASE("recipes that multiply inside each other are stopped, not opened by the thousand") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(mix_of("1", {{"brown crumb", 1}}));
    for (int level = 2; level <= 7; ++level) {
        const std::string inner = std::to_string(level - 1);
        shelf.put(mix_of(std::to_string(level), std::vector<std::pair<std::string, double>>(30, {inner, 1})));
    }
    CHECK(codes_of(shelf.recipe("7"), shelf) == Codes{"too-many-mixes"});
}

TEST_CASE("an amount of nothing, or less, is refused") {
    CHECK(codes_of(recipe("none", {{"brown crumb", 0.0 * gram}})) == Codes{"out-of-range"});
    CHECK(codes_of(recipe("less", {{"brown crumb", -1.0 * litre}})) == Codes{"out-of-range"});
    CHECK(codes_of(recipe("least", {{"brown crumb", 1e-3 * gram}})).empty());
}

TEST_CASE("a mix is not sold in packs, nor soaked") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(draft::micro_mix());
    CHECK(codes_of(recipe("packs", {{"micro mix", WholePacks{1}}}), shelf) == Codes{"no-pack"});
    CHECK(codes_of(recipe("soaked", {{"micro mix", Share{1}, Preparation::soaked}}), shelf) ==
          Codes{"unfit-preparation"});
    CHECK(codes_of(recipe("neither", {{"micro mix", Share{1}}}), shelf).empty());
}

TEST_CASE("a mix of liquids alone cannot be a part of another") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(mix_of("syrup", {{"molasses", 2}, {"glycerol", 1}}));
    const auto faults = faults_of_mix(recipe("outer", {{"brown crumb", Share{1}}, {"syrup", Share{1}}}), shelf);
    REQUIRE(faults.size() == 1);
    CHECK(faults.front().code == "no-solid");
    CHECK(faults.front().subject == "part 2");
    CHECK_THAT(faults.front().message, Catch::Contains("'syrup'"));
}

TEST_CASE("a fault inside a recipe in a recipe says whose it is") {
    MemoryShelf shelf(&draft::shelf());
    shelf.put(mix_of("inner", {{"brwn crumb", 1}}));
    const auto faults = faults_of_mix(mix_of("outer", {{"maize meal", 1}, {"inner", 1}}), shelf);
    REQUIRE(faults.size() == 1);
    CHECK_THAT(faults.front().message, Catch::Contains("(in the mix 'inner')"));
    CHECK(faults.front().subject.empty());
}

TEST_CASE("doses by the wet mass may come to half of it and not more") {
    const auto codes_at = [](double grams_each) {
        const Dose dose{"molasses", {DoseBasis::per_kg_wet, grams_each * gram}};
        return codes_of(recipe("sticky", {{"brown crumb", 1.0 * kilogram}}, {dose, dose}));
    };
    CHECK(codes_at(250).empty());
    CHECK(codes_at(251) == Codes{"out-of-range"});
}

TEST_CASE("shares beside measures are refused") {
    CHECK(codes_of(recipe("mixed", {{"brown crumb", Share{1}}, {"maize meal", 100.0 * gram}})) ==
          Codes{"mixed-measures"});
}

TEST_CASE("packs are refused where their size is not known or not one") {
    MemoryShelf shelf(&draft::shelf());
    Ingredient crumb = draft::shelf().ingredient("brown crumb");
    crumb.packs = {{1.0 * kilogram, {}, {}, {}}, {5.0 * kilogram, {}, {}, {}}};
    shelf.put(crumb);
    CHECK(codes_of(recipe("packs", {{"brown crumb", WholePacks{1}}}), shelf) == Codes{"several-packs"});
    CHECK(codes_of(recipe("packs", {{"maize meal", WholePacks{1}}}), shelf) == Codes{"no-pack"});
    crumb.packs = {{1.0 * kilogram, {}, {}, "one shop"}, {1.0 * kilogram, {}, {}, "another"}};
    shelf.put(crumb);
    CHECK(codes_of(recipe("packs", {{"brown crumb", WholePacks{1}}}), shelf).empty());
}

TEST_CASE("only pellets are soaked") {
    CHECK(codes_of(recipe("wet crumb", {{"brown crumb", 1.0 * kilogram, Preparation::soaked}})) ==
          Codes{"unfit-preparation"});
}

TEST_CASE("raw seed goes into no mix, as a part, a dose or in a mix inside; cooked feed and meal do") {
    CHECK(codes_of(mix_of("raw", {{"brown crumb", 1}, {"maple peas, dry", 1}}), draft::seeds()) == Codes{"cook-first"});
    CHECK(faults_of_mix(mix_of("raw", {{"brown crumb", 1}, {"vetches, raw", 1}}), draft::seeds()).at(0).subject ==
          "part 2");
    CHECK(codes_of(recipe("soaked", {{"pearl millet", Share{1}, Preparation::soaked}}), draft::seeds()) ==
          Codes{"cook-first"});
    CHECK(codes_of(recipe("dosed", {{"brown crumb", Share{1}}}, {{"pearl millet", parse_dose_rate("5 %")}}),
                   draft::seeds()) == Codes{"cook-first"});
    MemoryShelf shelf(&draft::seeds());
    shelf.put(mix_of("pea bed", {{"brown crumb", 1}, {"maple peas, dry", 1}}));
    const auto inside = faults_of_mix(mix_of("whole", {{"brown crumb", 1}, {"pea bed", 1}}), shelf);
    REQUIRE(inside.size() == 1);
    CHECK_THAT(inside.front().message, Catch::EndsWith("(in the mix 'pea bed')"));
    CHECK(codes_of(mix_of("fit", {{"pea meal", 1}, {"cooked maple peas", 1}, {"sesame", 1}}), draft::seeds()).empty());
}

TEST_CASE("a dose by the pint of pellets needs pellets") {
    const Dose dose{"molasses", {DoseBasis::per_pint_pellets, 15.0 * millilitre}};
    CHECK(codes_of(recipe("none", {{"brown crumb", 1.0 * kilogram}}, {dose})) == Codes{"no-pellets"});
    CHECK(codes_of(recipe("some", {{"fishmeal pellet 4 mm", 1.0 * kilogram}}, {dose})).empty());
}

TEST_CASE("a mix without anything dry, or without anything, is refused") {
    CHECK(codes_of(recipe("wet", {{"molasses", 1.0 * kilogram}})) == Codes{"no-solid"});
    CHECK(codes_of(recipe("empty", {})).front() == "empty-mix");
}

TEST_CASE("all the faults of a recipe are told at once, each with its place and a way out") {
    Recipe bad = recipe("bad", {{"brwn crumb", Share{1}}, {"maize meal", 100.0 * gram}, {"nothing like it", Share{1}}},
                        {{"mollasses", {DoseBasis::per_kg_dry, 5.0 * millilitre}}});
    bad.feel = "firmish";
    const auto faults = faults_of_mix(bad);
    std::vector<std::string> told;
    for (const Fault& fault : faults) told.push_back(fault.subject + ": " + fault.code);
    CHECK(told == Codes{": mixed-measures", "part 1: unknown-ingredient", "part 3: unknown-ingredient",
                        "dose 1: unknown-ingredient", "feel: unknown-feel"});
    CHECK_THAT(faults[1].hint, Catch::Contains("brown crumb"));
    CHECK_THAT(faults[3].hint, Catch::Contains("molasses"));
    for (const Fault& fault : faults) CHECK_FALSE(fault.hint.empty());
}

TEST_CASE("a recipe without a feel is meant firm") {
    CHECK(resolve(draft::crumb_mix(), draft::shelf()).feel.name == "firm");
    Recipe soft = draft::crumb_mix();
    soft.feel = "Soft";
    CHECK(resolve(soft, draft::shelf()).feel.aim == 1.7);
}
