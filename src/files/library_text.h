#pragma once

#include <string>
#include <vector>

#include "bait/blend_spec.h"
#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "bait/venue.h"

namespace baitwright {

/// An ingredient, recipe, strategy, venue, blend or feel as TOML that `read_library_file` reads back to the same
/// record. Derived properties are left out, for they are derived again. Blocks of several ([[ingredient]], [[mix]],
/// [[strategy]],
/// [[venue]], [[blend]], [[feel]]) may be joined into one file.
std::string toml_text(const std::vector<Ingredient>& ingredients);
std::string toml_text(const Recipe& recipe);
std::string toml_text(const Strategy& strategy);
std::string toml_text(const Venue& venue);
std::string toml_text(const BlendSpec& spec);
/// All feels, rising.
std::string toml_text(const std::vector<Feel>& feels);

}  // namespace baitwright
