#include "files/ingredient_reader.h"

#include <algorithm>
#include <array>

#include "bait/caution.h"
#include "bait/ingredient_completion.h"
#include "bait/ingredient_facts.h"
#include "files/property_reader.h"
#include "files/value_reader.h"
#include "quantities/amount_range.h"
#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// How sure a part of the composition is, where nothing is said.
constexpr double usual_composition_spread = 0.10;
/// Analyses are rounded, so that their parts may come to a little more than the whole.
constexpr double most_composition = 1.02;

std::optional<IngredientKind> read_kind(TableReader& table) {
    if (!table.required("kind", "\"base\"")) return std::nullopt;
    const auto word = table.word("kind", {ingredient_kind_names.begin(), ingredient_kind_names.end()});
    if (!word) return std::nullopt;
    const auto at = std::find(ingredient_kind_names.begin(), ingredient_kind_names.end(), *word);
    return static_cast<IngredientKind>(at - ingredient_kind_names.begin());
}

void read_properties(TableReader& table, Ingredient& ingredient) {
    visit_properties(ingredient, [&](const auto& facts, auto& property) {
        property = read_property(table, facts, {facts.usual_spread});
    });
}

void check_composition(const TableReader& table, const Composition& composition) {
    // Fibre may be counted among the carbohydrates, and salt among the ash.
    const double sum =
        composition.protein.value + composition.fat.value + composition.carbohydrate.value + composition.ash.value;
    if (sum <= most_composition) return;
    table.faults().add(table.place(), "inconsistent-values",
                       "protein, fat, carbohydrate and ash come to " + number_text_within(sum * 100, 0.05) + " %",
                       "they are shares of the mass as bought: together at most 100 %");
}

Composition read_composition(TableReader& ingredient) {
    Composition composition;
    auto table = ingredient.inner("composition", "a composition");
    if (!table) return composition;
    PropertyDefaults defaults{usual_composition_spread};
    defaults.spread = read_spread(*table).value_or(defaults.spread);
    defaults.source = read_source(*table).value_or(defaults.source);
    visit_composition(composition, [&](std::string_view key, auto& share) {
        const PropertyFacts<NoDimension> facts{key, "%", percent, 0, 100, false, defaults.spread};
        share = read_property(*table, facts, defaults);
    });
    table->refuse_unknown_keys();
    check_composition(*table, composition);
    return composition;
}

std::optional<std::variant<Mass, Volume>> read_pack_size(TableReader& table) {
    if (!table.required("size", "\"1 kg\"")) return std::nullopt;
    const auto size = parsed(table, "size", "1 kg", parse_mass_or_volume);
    if (size)
        std::visit([&](auto amount) { check_amount(*table.find("size"), "size", amount, table.faults()); }, *size);
    return size;
}

Pack read_pack(TableReader& table) {
    Pack pack;
    pack.size = read_pack_size(table).value_or(Mass{});
    pack.price = parsed(table, "price", "£3.40", [](std::string_view text) { return in_range(parse_money(text)); });
    pack.on = table.date("on");
    pack.shop = table.other_name("shop");
    table.refuse_unknown_keys();
    return pack;
}

Keeping read_keeping(TableReader& ingredient) {
    Keeping keeps;
    auto table = ingredient.inner("keeps", "keeping times");
    if (!table) return keeps;
    keeps.dry = amount_of<Time>(*table, "dry", "9 month");
    keeps.cold = amount_of<Time>(*table, "cold", "2 d");
    keeps.frozen = amount_of<Time>(*table, "frozen", "3 month");
    table->refuse_unknown_keys();
    return keeps;
}

std::string caution_hint(std::string_view word) {
    std::vector<std::string> words;
    for (const Caution& caution : all_cautions()) words.emplace_back(caution.word);
    words.emplace_back(no_allergens);
    std::string near = did_you_mean(word, words);
    if (!near.empty()) return near;
    std::string all = "known here:";
    for (const std::string& known : words) all += (known == words.front() ? " " : ", ") + known;
    return all;
}

std::vector<std::string> read_cautions(TableReader& table) {
    std::vector<std::string> cautions;
    const toml::node* node = table.find("cautions");
    if (!node) return cautions;
    const auto* list = node->as_array();
    if (!list) {
        table.faults().add(place_of(*node), "wrong-type", "'cautions' must be a list, not " + shown(*node),
                           R"(as in cautions = ["dust", "nuts"])");
        return cautions;
    }
    for (const toml::node& entry : *list) {
        const auto word = text_of(entry, "cautions", "dust", table.faults());
        if (!word) continue;
        if (!find_caution(*word) && *word != no_allergens)
            table.faults().add(place_of(entry), "unknown-caution", in_quotes(*word) + " is not a known caution",
                               table.faults().tells_of(place_of(entry)) ? caution_hint(*word) : "take it out");
        else if (std::find(cautions.begin(), cautions.end(), *word) == cautions.end())  // once is as good as twice
            cautions.push_back(*word);
    }
    return cautions;
}

void check_dose(const TableReader& table, const DoseRate& rate, std::string_view key) {
    std::visit([&](auto each) { check_amount(*table.table().get(key), key, each, table.faults()); }, rate.each);
}

/// What the properties say of each other. Of a kind that could not be read nothing is known to be missing, and a value
/// that could not be read has had its fault.
void check_properties(const TableReader& table, const Ingredient& ingredient, bool kind_known) {
    for (const PropertyFault& found : faults_of(ingredient)) {
        const bool by_kind = found.fault.code == "missing-value" || found.fault.code == "unfit-key";
        if (by_kind && !kind_known) continue;
        if (found.fault.code == "missing-value" && table.has(found.key)) continue;
        table.faults().add(table.place_of_key(found.key), found.fault.code, found.fault.message, found.fault.hint);
    }
    if (kind_known && !ingredient.solute.empty() && ingredient.kind != IngredientKind::liquid &&
        ingredient.kind != IngredientKind::powder)
        table.faults().add(table.place_of_key("solute"), "unfit-key", "'solute' belongs to a liquid or a powder alone",
                           "take the line out, or give the ingredient another kind");
}

}  // namespace

std::optional<Ingredient> read_ingredient(TableReader& table, EntryNames& names) {
    const std::size_t faults_before = table.faults().count();
    Ingredient ingredient;
    ingredient.name = names.claim(table).value_or("");
    const auto kind = read_kind(table);
    ingredient.kind = kind.value_or(IngredientKind::base);
    read_properties(table, ingredient);
    ingredient.composition = read_composition(table);
    ingredient.colour = table.text("colour").value_or("");
    ingredient.solute = table.word("solute", {"glycerol", "sucrose", "salt"}).value_or("");
    ingredient.label_dose = parsed(table, "label_dose", "25 ml per kg dry", parse_dose_rate);
    if (ingredient.label_dose) check_dose(table, *ingredient.label_dose, "label_dose");
    table.each_block("pack", "a pack", [&](TableReader& pack) { ingredient.packs.push_back(read_pack(pack)); });
    ingredient.keeps = read_keeping(table);
    ingredient.cautions = read_cautions(table);
    ingredient.note = table.prose("note");
    table.refuse_unknown_keys();
    check_properties(table, ingredient, kind.has_value());
    if (table.faults().count() > faults_before) return std::nullopt;
    return ingredient;
}

bool is_ingredient_key(std::string_view key) {
    constexpr std::array<std::string_view, 8> others{"kind",     "pack",       "composition", "keeps",
                                                     "cautions", "label_dose", "solute",      "colour"};
    bool found = std::find(others.begin(), others.end(), key) != others.end();
    const Ingredient none;
    visit_properties(none, [&](const auto& facts, const auto&) { found = found || facts.key == key; });
    return found;
}

}  // namespace baitwright
