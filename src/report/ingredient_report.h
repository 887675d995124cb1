#pragma once

#include <vector>

#include "bait/ingredient.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

/// A line an ingredient: name, kind, loose density, A and B, price.
Told ingredient_list_told(const std::vector<Ingredient>& ingredients);
Json ingredient_list_json(const std::vector<Ingredient>& ingredients);

/// All that is known of one, each value with its spread and source.
Told ingredient_told(const Ingredient& ingredient);
Json ingredient_json(const Ingredient& ingredient);

}  // namespace baitwright
