#include "files/library_text.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "day_of.h"
#include "files/any_ingredient.h"
#include "files/library_file.h"
#include "files/same_record.h"
#include "files/toml_writer.h"
#include "quantities/all_digits.h"

using namespace baitwright;

namespace {

PartAmount any_part_amount() {
    switch (*rc::gen::inRange(0, 4)) {
        case 0:
            return number_between(1e-6, 1e4) * kilogram;
        case 1:
            return number_between(1e-6, 1e4) * litre;
        case 2:
            return WholePacks{number_between(1e-6, 1e6)};
        default:
            return Share{number_between(1e-6, 1e6)};
    }
}

Recipe any_recipe() {
    Recipe recipe{any_name(), {}, any_text(), any_text(), any_text(), any_text(), {}, {}};
    if (*rc::gen::arbitrary<bool>()) recipe.feel = any_name();
    const int parts = *rc::gen::inRange(1, 6), doses = *rc::gen::inRange(0, 4);
    for (int i = 0; i < parts; ++i)
        recipe.parts.push_back(
            {any_name(), any_part_amount(), *rc::gen::element(Preparation::as_bought, Preparation::soaked)});
    for (int i = 0; i < doses; ++i) recipe.doses.push_back({any_name(), any_rate()});
    return recipe;
}

void assert_no_fault(const LibraryFile& file) {
    for (const Fault& fault : file.faults) RC_LOG() << fault.source_line << "\n" << fault.message << "\n";
    RC_ASSERT(file.faults.empty());
}

}  // namespace

TEST_CASE("any ingredients are written and read back as they were") {
    CHECK(rc::check([] {
        std::vector<Ingredient> ingredients;
        for (int i = *rc::gen::inRange(1, 4); i > 0; --i) ingredients.push_back(any_ingredient(i));
        const LibraryFile back = read_library_file(toml_text(ingredients), "a.toml");
        assert_no_fault(back);
        RC_ASSERT(back.ingredients.size() == ingredients.size());
        for (std::size_t i = 0; i < ingredients.size(); ++i)
            RC_ASSERT(first_difference(ingredients[i], back.ingredients[i]) == std::string());
    }));
}

TEST_CASE("any mix is written and read back as it was") {
    CHECK(rc::check([] {
        const Recipe recipe = any_recipe();
        const LibraryFile back = read_library_file(toml_text(recipe), "a.toml");
        assert_no_fault(back);
        RC_ASSERT(back.recipes.size() == 1U);
        RC_ASSERT(first_difference(recipe, back.recipes[0].value) == std::string());
    }));
}

TEST_CASE("with all digits any ingredient and any mix come back to the last bit") {
    // Every bit shows in the text: where two texts with all digits are the same, so are the records.
    CHECK(rc::check("ingredient", [] {
        const AllDigitsHere exactly;
        const std::string text = toml_text({any_ingredient(1)});
        const LibraryFile back = read_library_file(text, "a.toml");
        assert_no_fault(back);
        RC_ASSERT(toml_text(back.ingredients) == text);
    }));
    CHECK(rc::check("mix", [] {
        const AllDigitsHere exactly;
        const std::string text = toml_text(any_recipe());
        const LibraryFile back = read_library_file(text, "a.toml");
        assert_no_fault(back);
        RC_ASSERT(toml_text(back.recipes.at(0).value) == text);
    }));
}

TEST_CASE("written blocks may be joined into one file") {
    Ingredient syrup;
    syrup.name = "syrup";
    syrup.kind = IngredientKind::liquid;
    syrup.density = {1.3 * gram_per_millilitre, 0.1, {Origin::measured, "jug"}};
    syrup.water = {0.3, 0.1, {Origin::measured, "scales"}};
    syrup.wetting = {0.8 * gram_per_millilitre, 0.3, {Origin::derived, "usual"}};
    const Recipe inner{"inner", "", "", "", "", "", {{"syrup", Share{1}}}, {}};
    const Recipe outer{"outer", "", "", "", "", "", {{"inner", Share{1}}}, {}};
    const LibraryFile file = read_library_file(toml_text({syrup}) + toml_text(inner) + toml_text(outer), "a.toml");
    CHECK(file.faults.empty());
    CHECK(file.recipes.size() == 2);
    CHECK_FALSE(file.ingredients.at(0).wetting.known());
}

TEST_CASE("an ingredient is written as a person would write it") {
    Ingredient syrup;
    syrup.name = "sweet \"dark\" syrup";
    syrup.kind = IngredientKind::liquid;
    syrup.density = {1.3 * gram_per_millilitre, 0.1, {Origin::measured, "jug"}};
    syrup.binder = {-1.5, 0.5, {Origin::standing, "from memory"}};
    syrup.keeps.dry = 9.0 * month;
    syrup.packs = {{500.0 * millilitre, parse_money("£3.40"), day_of("2026-03-01"), "the mill"}};
    CHECK(toml_text({syrup}) ==
          "[[ingredient]]\n"
          "name = \"sweet \\\"dark\\\" syrup\"\n"
          "kind = \"liquid\"\n"
          "binder = { value = -1.5, spread = \"50 %\", source = \"default: from memory\" }\n"
          "density = { value = \"1.3 g/ml\", spread = \"10 %\", source = \"measured: jug\" }\n"
          "keeps = { dry = \"9 month\" }\n"
          "[[ingredient.pack]]\n"
          "size = \"500 ml\"\n"
          "price = \"£3.40\"\n"
          "on = 2026-03-01\n"
          "shop = \"the mill\"\n");
}

TEST_CASE("what TOML would not take as it stands is escaped") {
    CHECK(toml_quoted("\"\\\n\r\t") == R"("\"\\\n\r\t")");
    CHECK(toml_quoted(std::string("\0\x1B\x7F", 3)) == R"("\u0000\u001B\u007F")");
    CHECK(toml_quoted("½ #'") == "\"½ #'\"");
}
