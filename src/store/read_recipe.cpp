#include <type_traits>

#include "quantities/amount_range.h"
#include "quantities/in_quotes.h"
#include "quantities/suggestion.h"
#include "store/entries.h"
#include "store/query.h"
#include "store/stored_words.h"

namespace baitwright {

namespace {

constexpr const char* select_recipe = "SELECT id, name, feel, purpose, avoid, why, note FROM recipe WHERE folded = ?1";
constexpr const char* select_recipe_parts =
    "SELECT part_of, measure, amount, prepare FROM recipe_part WHERE recipe_id = ?1 ORDER BY position";
constexpr const char* select_doses =
    "SELECT dose_of, basis, measure, each FROM recipe_dose WHERE recipe_id = ?1 ORDER BY position";

Part part_in(const StoreConnection& connection, const Query& row) {
    const auto amount = part_amount(row.text(1), row.number(2));
    const auto prepare = value_of<Preparation>(preparation_words, row.text(3));
    if (!amount || !prepare) throw connection.damaged("a part measured by '" + row.text(1) + "', " + row.text(3));
    return {row.text(0), *amount, *prepare};
}

Dose dose_in(const StoreConnection& connection, const Query& row) {
    const auto rate = dose_rate(row.text(1), row.text(2), row.number(3));
    if (!rate) throw connection.damaged("a dose by '" + row.text(1) + "'");
    return {row.text(0), *rate};
}

template <class Amount>
bool is_amount_beyond(const Amount& amount) {
    if constexpr (std::is_same_v<Amount, Mass> || std::is_same_v<Amount, Volume>) return !lies_in_range(amount);
    return false;  // counts and shares are judged where the mix is opened up
}

void refuse_beyond_range(const Recipe& recipe) {
    const auto refuse = [&](const auto& amount, const std::string& of) {
        if (std::visit([](const auto& one) { return is_amount_beyond(one); }, amount))
            throw stored_mix_out_of_range(recipe.name, "the amount of " + in_quotes(of) + " must be " +
                                                           range_text<Mass>() + ", or " + range_text<Volume>());
    };
    for (const Part& part : recipe.parts) refuse(part.amount, part.of);
    for (const Dose& dose : recipe.doses) refuse(dose.rate.each, dose.of);
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
    if (reading == Reading::checked) refuse_beyond_range(recipe);
    return recipe;
}

}  // namespace baitwright
