#include "files/library_text.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "bait/caution.h"
#include "files/library_file.h"
#include "files/same_record.h"
#include "files/toml_writer.h"

using namespace baitwright;

namespace {

/// Any number from low to high, both included.
double number_between(double low, double high) {
    const auto step = *rc::gen::inRange<int>(0, 1000001);
    return low + (high - low) * (static_cast<double>(step) / 1e6);
}

std::string any_text() {
    const auto letters = rc::gen::element<std::string>("a", "Z", " ", "é", "濡", "😀", "\"", "\\", "'", "\n", "\t", "#",
                                                       "=", "]", "½", "%");
    std::string text;
    for (const std::string& letter : *rc::gen::container<std::vector<std::string>>(letters)) text += letter;
    return text;
}

std::string any_line() {
    std::string line;
    for (const char c : any_text())
        if (c != '\n' && c != '\t') line += c;
    return line;
}

std::string any_name() {
    return "n" + any_line() + "e";
}

Source any_source() {
    const Origin origin = *rc::gen::element(Origin::standing, Origin::published, Origin::learned, Origin::measured);
    std::string detail = any_line();
    while (!detail.empty() && detail.front() == ' ') detail.erase(0, 1);
    return {origin, detail};
}

template <class D>
Quantity<D> between(double low, double high, Unit<D> unit) {
    return number_between(low, high) * unit;
}
Ratio between(double low, double high, Unit<NoDimension> unit) {
    return number_between(low, high) * unit.in_si;
}

std::variant<Mass, Volume> any_amount() {
    const double number = number_between(0.001, 10000);
    return *rc::gen::arbitrary<bool>() ? std::variant<Mass, Volume>(number * kilogram) : number * litre;
}

DoseRate any_rate() {
    const auto basis = *rc::gen::element(DoseBasis::per_kg_dry, DoseBasis::per_kg_wet, DoseBasis::per_litre_water,
                                         DoseBasis::per_pint_pellets, DoseBasis::share_of_dry);
    if (basis == DoseBasis::share_of_dry) return {basis, number_between(0.001, 1) * kilogram};
    return {basis, any_amount()};
}

std::optional<Time> any_time() {
    if (*rc::gen::arbitrary<bool>()) return std::nullopt;
    const auto unit = *rc::gen::element(minute.in_si, hour.in_si, day.in_si, month.in_si);
    return Time::from_si(*rc::gen::element(1.0, 3.0, 9.0, number_between(0.001, 100)) * unit);
}

std::vector<Pack> any_packs() {
    std::vector<Pack> packs(static_cast<std::size_t>(*rc::gen::inRange(0, 3)));
    for (Pack& pack : packs) {
        pack.size = any_amount();
        if (*rc::gen::arbitrary<bool>())
            pack.price = Money(*rc::gen::inRange(0, 100000),
                               currency_named(*rc::gen::element<std::string>("GBP", "EUR", "CHF", "JPY", "KWD")));
        if (*rc::gen::arbitrary<bool>()) pack.on = "2024-02-29";
        pack.shop = any_line();
    }
    return packs;
}

/// Each property that the kind may have, stated or not; no two of them at odds.
void state_properties(Ingredient& ingredient) {
    visit_properties(ingredient, [&](const auto& facts, auto& property) {
        const Need need = need_of(ingredient.kind, facts.key);
        if (need == Need::absent || (need == Need::optional && *rc::gen::arbitrary<bool>())) return;
        property = {between(facts.lowest, facts.highest, facts.unit), number_between(0, 3), any_source()};
    });
    ingredient.slump.value = ingredient.absorption.value + 5;
    ingredient.loose_density.value = number_between(20, 500) * gram_per_litre;
    ingredient.envelope_density.value = number_between(0.6, 3) * gram_per_millilitre;
    ingredient.skeleton_density.value = number_between(3, 8) * gram_per_millilitre;
}

Ingredient any_ingredient(int number) {
    Ingredient ingredient;
    ingredient.name = any_name() + std::to_string(number);
    ingredient.kind = static_cast<IngredientKind>(*rc::gen::inRange(0, 8));
    state_properties(ingredient);
    visit_composition(ingredient.composition, [&](std::string_view, Property<Ratio>& share) {
        if (*rc::gen::arbitrary<bool>()) share = {number_between(0, 0.25), number_between(0, 3), any_source()};
    });
    ingredient.colour = any_line();
    if (ingredient.kind == IngredientKind::liquid)
        ingredient.solute = *rc::gen::element<std::string>("", "glycerol", "sucrose", "salt");
    if (*rc::gen::arbitrary<bool>()) ingredient.label_dose = any_rate();
    ingredient.packs = any_packs();
    ingredient.keeps = {any_time(), any_time(), any_time()};
    for (const Caution& caution : all_cautions())
        if (*rc::gen::inRange(0, 4) == 0) ingredient.cautions.emplace_back(caution.word);
    ingredient.note = any_text();
    return ingredient;
}

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
        RC_ASSERT(first_difference(recipe, back.recipes[0].recipe) == std::string());
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
    syrup.packs = {{500.0 * millilitre, parse_money("£3.40"), "2026-03-01", "the mill"}};
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
