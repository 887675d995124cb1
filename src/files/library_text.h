#pragma once

#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "bait/recipe.h"

namespace baitwright {

/// An ingredient or recipe as TOML that `read_library_file` reads back to the same record. Derived properties are left
/// out, for they are derived again. Blocks of several ([[ingredient]], [[mix]]) may be joined into one file.
std::string toml_text(const std::vector<Ingredient>& ingredients);
std::string toml_text(const Recipe& recipe);

}  // namespace baitwright
