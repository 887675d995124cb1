#pragma once

#include <rapidcheck.h>

#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"

namespace baitwright {

/// Entries that state nothing but their name.
Ingredient ingredient_named(const std::string& name);
Recipe recipe_named(const std::string& name);
Strategy strategy_named(const std::string& name);

/// Entries with everything that can be stated stated at random: any finite number, any text, any number of packs.
double any_number();
std::string any_text();
Ingredient any_ingredient(const std::string& name);
Recipe any_recipe(const std::string& name);
Strategy any_strategy(const std::string& name);

}  // namespace baitwright
