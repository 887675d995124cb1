#pragma once

#include <string>
#include <vector>

#include "answers/mix/dose_amounts.h"
#include "answers/mix/mix_answer.h"
#include "bait/recipe.h"
#include "bait/strategy.h"

/// Answers as rows of cells for a spreadsheet, headings first, numbers unrounded with their unit in the heading.
namespace baitwright {

using Rows = std::vector<std::vector<std::string>>;

Rows mix_rows(const MixAnswer& answer);
Rows dose_rows(const DoseAnswer& answer);
Rows recipe_list_rows(const std::vector<Recipe>& recipes);
Rows strategy_list_rows(const std::vector<Strategy>& strategies);

}  // namespace baitwright
