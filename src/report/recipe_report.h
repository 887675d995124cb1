#pragma once

#include <vector>

#include "bait/recipe.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

Told recipe_list_told(const std::vector<Recipe>& recipes);
Json recipe_list_json(const std::vector<Recipe>& recipes);
Told recipe_told(const Recipe& recipe);
Json recipe_json(const Recipe& recipe);

}  // namespace baitwright
