#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "bait/ingredient.h"

namespace baitwright {

/// Whether it carries that word in its file.
bool has_caution(const Ingredient& ingredient, std::string_view word);

/// The words that are told of it (`caution.h`): its own, but a meal of pulses, seeds or nuts cannot be soaked and
/// boiled, so that what it carries of them is told as "raw meal", once. Of grains and feed fed whole of which nothing
/// was stated, nobody knows the allergens, and that is told.
std::vector<std::string> caution_words(const Ingredient& ingredient);

/// Adds the words that are told of it.
void add_caution_words(const Ingredient& ingredient, std::vector<std::string>& words);

}  // namespace baitwright
