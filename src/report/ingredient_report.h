#pragma once

#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "report/json.h"

namespace baitwright {

/// A line an ingredient: name, kind, loose density, A and B, price.
std::string ingredient_list_text(const std::vector<Ingredient>& ingredients);
Json ingredient_list_json(const std::vector<Ingredient>& ingredients);

/// All that is known of one, each value with its spread and source.
std::string ingredient_text(const Ingredient& ingredient);
Json ingredient_json(const Ingredient& ingredient);

}  // namespace baitwright
