#include <algorithm>

#include "bait/beyond_range.h"
#include "bait/ingredient_completion.h"
#include "bait/ingredient_facts.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/query.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_ingredient =
    "SELECT id, name, kind, colour, solute, dose_basis, dose_measure, dose_each, keeps_dry, keeps_cold, keeps_frozen,"
    " note FROM ingredient WHERE folded = ?1";
constexpr const char* select_properties =
    "SELECT key, value, spread, source FROM ingredient_property WHERE ingredient_id = ?1";
constexpr const char* select_cautions = "SELECT word FROM caution WHERE ingredient_id = ?1 ORDER BY position";

/// A row of `ingredient_property`, whatever its dimension.
struct StoredProperty {
    std::string key;
    double value, spread;
    Source source;
};

// What a column holds as the record's type; words that mean nothing can only come from damage.
template <class Parse>
auto understood(const StoreConnection& connection, Parse&& parse) {
    try {
        return parse();
    } catch (const InputError& error) {
        throw connection.damaged(error.what());
    }
}

std::optional<DoseRate> dose_in(const StoreConnection& connection, const Query& row, int column) {
    if (row.empty(column)) return std::nullopt;
    auto rate = dose_rate(row.text(column), row.text(column + 1), row.number(column + 2));
    if (!rate) throw connection.damaged("a dose by '" + row.text(column) + "'");
    return rate;
}

Ingredient ingredient_in(const StoreConnection& connection, const Query& row) {
    Ingredient ingredient;
    ingredient.name = row.name(1);
    const auto kind = value_of<IngredientKind>(ingredient_kind_names, row.text(2));
    if (!kind) throw connection.damaged("an ingredient of kind '" + row.text(2) + "'");
    ingredient.kind = *kind;
    ingredient.colour = row.text(3);
    ingredient.solute = row.text(4);
    ingredient.label_dose = dose_in(connection, row, 5);
    ingredient.keeps = {row.as<std::optional<Time>>(8), row.as<std::optional<Time>>(9),
                        row.as<std::optional<Time>>(10)};
    ingredient.note = row.text(11);
    return ingredient;
}

std::vector<StoredProperty> properties_of(StoreConnection& connection, std::int64_t id) {
    std::vector<StoredProperty> properties;
    Query rows(connection, select_properties, id);
    while (rows.next()) {
        Source source = understood(connection, [&] { return parse_source(rows.text(3)); });
        properties.push_back({rows.text(0), rows.number(1), rows.number(2), std::move(source)});
    }
    return properties;
}

template <class Q>
void take(std::vector<StoredProperty>& properties, std::string_view key, Property<Q>& into) {
    const auto found =
        std::find_if(properties.begin(), properties.end(), [&](const StoredProperty& p) { return p.key == key; });
    if (found != properties.end()) into = {Q::from_si(found->value), found->spread, std::move(found->source)};
}

void read_properties(StoreConnection& connection, std::int64_t id, Ingredient& ingredient) {
    std::vector<StoredProperty> properties = properties_of(connection, id);
    visit_properties(ingredient, [&](const auto& facts, auto& member) { take(properties, facts.key, member); });
    visit_composition(ingredient.composition, [&](std::string_view key, auto& member) {
        take(properties, composition_prefix + std::string(key), member);
    });
}

}  // namespace

std::optional<Ingredient> read_ingredient(StoreConnection& connection, std::string_view name, Reading reading) {
    const StoreConnection::Snapshot snapshot(connection);
    Query row(connection, select_ingredient, folded_name(name));
    if (!row.next()) return std::nullopt;
    const std::int64_t id = row.whole(0);
    Ingredient ingredient = ingredient_in(connection, row);
    read_properties(connection, id, ingredient);
    ingredient.packs = read_packs(connection, id);
    Query cautions(connection, select_cautions, id);
    while (cautions.next()) ingredient.cautions.push_back(cautions.text(0));
    if (const std::string beyond = beyond_range(ingredient); reading == Reading::checked && !beyond.empty())
        throw stored_out_of_range(ingredient.name, beyond);
    complete(ingredient);
    return ingredient;
}

}  // namespace baitwright
