#pragma once

#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"

namespace baitwright {

/// An ingredient, recipe or strategy as TOML that `read_library_file` reads back to the same record. Derived properties are left
/// out, for they are derived again. Blocks of several ([[ingredient]], [[mix]], [[strategy]]) may be joined into one file.
std::string toml_text(const std::vector<Ingredient>& ingredients);
std::string toml_text(const Recipe& recipe);
std::string toml_text(const Strategy& strategy);

}  // namespace baitwright
