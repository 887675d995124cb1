#pragma once

#include <string>

#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"

/// Every field as text, numbers by their bits: two entries are the same where these are.
namespace baitwright {

std::string written_out(const Ingredient& ingredient);
std::string written_out(const Recipe& recipe);
std::string written_out(const Strategy& strategy);

}  // namespace baitwright
