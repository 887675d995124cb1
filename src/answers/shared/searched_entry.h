#pragma once

#include "answers/shared/find_entries.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"

/// What is searched of each kind of entry that a shelf holds.
namespace baitwright {

SearchedEntry searched(const Ingredient& ingredient);
SearchedEntry searched(const Recipe& recipe);
SearchedEntry searched(const Strategy& strategy);

/// The kind of an entry, as it is searched.
SearchedText kind_text(EntryKind kind);

}  // namespace baitwright
