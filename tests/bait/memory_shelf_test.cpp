#include "bait/memory_shelf.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "bait/draft_shelf.h"
#include "quantities/fault_of.h"

using namespace baitwright;

TEST_CASE("entries are found whatever the case and blanks of their name") {
    CHECK(draft::shelf().ingredient("  Brown  CRUMB ").name == "brown crumb");
    CHECK_FALSE(draft::shelf().find_ingredient("no such thing").has_value());
}

TEST_CASE("what is not there is not found, with the nearest name") {
    const Fault fault = fault_of([] { (void)draft::shelf().ingredient("brwn crumb"); });
    CHECK(fault.code == "unknown-ingredient");
    CHECK_THAT(fault.hint, Catch::Contains("brown crumb"));
    CHECK_THROWS_AS(draft::shelf().recipe("nothing"), NotFound);
}

TEST_CASE("an entry takes the place of one of the same name") {
    MemoryShelf shelf;
    Ingredient crumb = draft::shelf().ingredient("brown crumb");
    shelf.put(crumb);
    crumb.name = "Brown Crumb";
    crumb.note = "another";
    shelf.put(crumb);
    CHECK(shelf.ingredient("brown crumb").note == "another");
    CHECK(shelf.ingredient_names() == std::vector<std::string>{"Brown Crumb"});
}

TEST_CASE("an ingredient is completed when it is put on the shelf") {
    CHECK(draft::shelf().ingredient("fishmeal pellet 4 mm").length.value.in(millimetre) == Approx(4.8));
    CHECK(draft::shelf().ingredient("fishmeal pellet 4 mm").length.source.origin == Origin::derived);
}

TEST_CASE("a shelf looks on the one below for what it lacks, and hides what it has itself") {
    MemoryShelf upper(&draft::shelf());
    Ingredient crumb = draft::shelf().ingredient("brown crumb");
    crumb.note = "mine";
    upper.put(crumb);
    upper.put(draft::mix_of("my mix", {{"brown crumb", 1}}));
    CHECK(upper.ingredient("brown crumb").note == "mine");
    CHECK(upper.ingredient("maize meal").name == "maize meal");
    CHECK(upper.feels().size() == 6);
    CHECK(upper.ingredient_names() == draft::shelf().ingredient_names());
    CHECK(upper.recipe_names() == std::vector<std::string>{"my mix"});
}

TEST_CASE("strategies are found like mixes, and the shelf below is asked for what is lacking") {
    MemoryShelf lower, upper(&lower);
    Strategy bank;
    bank.name = "Far Bank";
    lower.put(bank);
    bank.name = "margin";
    upper.put(bank);
    CHECK(upper.strategy("far  bank").name == "Far Bank");
    CHECK(upper.strategy_names() == std::vector<std::string>{"Far Bank", "margin"});
    CHECK(fault_of([&] { (void)upper.strategy("far bnk"); }).hint == "did you mean 'Far Bank'?");
    CHECK(fault_of([&] { (void)lower.strategy("margin"); }).code == "unknown-strategy");
}

TEST_CASE("feels rise however they were put") {
    MemoryShelf shelf;
    shelf.put(std::vector<Feel>{{"wet", 2.0, 3.0, {}}, {"dry", 0.5, 1.0, {}}});
    CHECK(shelf.feels().front().name == "dry");
}

TEST_CASE("names come in alphabetical order") {
    const auto names = draft::shelf().ingredient_names();
    CHECK(std::is_sorted(names.begin(), names.end()));
    CHECK(names.size() == std::size(draft::solids) + std::size(draft::liquids));
}
