#pragma once

#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "files/library_file.h"
#include "store/store.h"

namespace baitwright {

/// What a change did to one entry.
struct EntryChange {
    enum class Kind {
        added,
        replaced,   ///< an entry of that name was there; it is kept as an old version
        unchanged,  ///< it says the same as the one that was there
        renamed,    ///< the same under another name
    };
    std::string name;
    Kind kind = Kind::added;
    std::string of = {};  ///< "ingredient", "mix", "strategy", "venue", "blend" or "feel"
};

/// Puts entries into the store, all or none, in place of those of the same name, which are kept as old versions.
/// Ingredients must be free of faults.
std::vector<EntryChange> put_ingredients(Store& store, const std::vector<Ingredient>& ingredients, Date today);
/// Recipes are resolved first, with each other in reach. Throws InputError with the faults of all of them.
std::vector<EntryChange> put_recipes(Store& store, const std::vector<Recipe>& recipes, Date today);
/// Strategies are unrolled first. Throws InputError with the faults of all of them.
std::vector<EntryChange> put_strategies(Store& store, const std::vector<Strategy>& strategies, Date today);

/// Everything that a file without faults of its own holds, likewise. What it refers to is in it or in the store: throws
/// InputError with all faults, at their places in `text`.
std::vector<EntryChange> put_file(Store& store, const LibraryFile& file, const std::string& text, Date today);

/// The check and the putting alone; putting belongs inside `Store::change`.
void check_file(const LibraryFile& file, const std::string& text, const Store& store);
std::vector<EntryChange> put_checked(Store& store, const LibraryFile& file, Date today);

}  // namespace baitwright
