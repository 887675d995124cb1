#pragma once

#include <string>
#include <vector>

#include "bait/recipe.h"
#include "report/json.h"

namespace baitwright {

std::string recipe_list_text(const std::vector<Recipe>& recipes);
Json recipe_list_json(const std::vector<Recipe>& recipes);
std::string recipe_text(const Recipe& recipe);
Json recipe_json(const Recipe& recipe);

}  // namespace baitwright
