#include "bait/shelf.h"

#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

std::string hint_among(std::string_view name, const std::vector<std::string>& names, std::string_view otherwise) {
    std::string hint = did_you_mean(name, names);
    return hint.empty() ? std::string(otherwise) : hint;
}

}  // namespace

Ingredient Shelf::ingredient(std::string_view name) const {
    if (auto found = find_ingredient(name)) return *std::move(found);
    throw NotFound("unknown-ingredient", "no ingredient is called '" + std::string(name) + "'",
                   hint_among(name, ingredient_names(), "see them all with: baitwright ingredient list"));
}

Recipe Shelf::recipe(std::string_view name) const {
    if (auto found = find_recipe(name)) return *std::move(found);
    throw NotFound("unknown-recipe", "no mix is called '" + std::string(name) + "'",
                   hint_among(name, recipe_names(), "see them all with: baitwright recipe list"));
}

Strategy Shelf::strategy(std::string_view name) const {
    if (auto found = find_strategy(name)) return *std::move(found);
    throw NotFound("unknown-strategy", "no strategy is called '" + std::string(name) + "'",
                   hint_among(name, strategy_names(), "see them all with: baitwright strategy list"));
}

}  // namespace baitwright
