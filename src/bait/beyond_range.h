#pragma once

#include <string>

#include "bait/ingredient.h"
#include "bait/log_entry.h"
#include "bait/recipe.h"
#include "bait/strategy.h"

/// What was stored before its range was held to: it can still be told apart when it is read.
namespace baitwright {

/// What lies outside its range, as a sentence goes on: "its pack of 1e-300 g must be from 1 mg to 10000 kg". Empty
/// where nothing does.
std::string beyond_range(const Pack& pack);
std::string beyond_range(const Ingredient& ingredient);
/// Counts and shares are judged where the mix is opened up.
std::string beyond_range(const Recipe& recipe);
/// "its session must be from 1 min to 24 h"; the names in it are not looked at.
std::string beyond_range(const Strategy& strategy);
/// "the water poured must be from 0 to 10000 kg"; the names in it are not looked at.
std::string beyond_range(const LoggedThing& what);

}  // namespace baitwright
