#include "bait/beyond_range.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/query.h"
#include "store/store_fault.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_recipe = "SELECT id, name, feel, purpose, avoid, why, note FROM recipe WHERE folded = ?1";
constexpr const char* select_recipe_parts =
    "SELECT part_of, measure, amount, prepare FROM recipe_part WHERE recipe_id = ?1 ORDER BY position";
constexpr const char* select_doses =
    "SELECT dose_of, basis, measure, each FROM recipe_dose WHERE recipe_id = ?1 ORDER BY position";

Part part_in(const StoreConnection& connection, const Query& row) {
    const auto amount = stored_alternative<PartAmount>(measure_words, row.text(1), row.number(2));
    const auto prepare = value_of<Preparation>(preparation_words, row.text(3));
    if (!amount || !prepare) throw connection.damaged("a part measured by '" + row.text(1) + "', " + row.text(3));
    return {row.text(0), *amount, *prepare};
}

Dose dose_in(const StoreConnection& connection, const Query& row) {
    const auto rate = dose_rate(row.text(1), row.text(2), row.number(3));
    if (!rate) throw connection.damaged("a dose by '" + row.text(1) + "'");
    return {row.text(0), *rate};
}

}  // namespace

std::optional<Recipe> read_recipe(StoreConnection& connection, std::string_view name, Reading reading) {
    const StoreConnection::Snapshot snapshot(connection);
    Query row(connection, select_recipe, folded_name(name));
    if (!row.next()) return std::nullopt;
    Recipe recipe{row.name(1), row.text(2), row.text(3), row.text(4), row.text(5), row.text(6), {}, {}};
    Query parts(connection, select_recipe_parts, row.whole(0));
    while (parts.next()) recipe.parts.push_back(part_in(connection, parts));
    Query doses(connection, select_doses, row.whole(0));
    while (doses.next()) recipe.doses.push_back(dose_in(connection, doses));
    if (const std::string beyond = beyond_range(recipe); reading == Reading::checked && !beyond.empty())
        throw stored_mix_out_of_range(recipe.name, beyond);
    return recipe;
}

}  // namespace baitwright
