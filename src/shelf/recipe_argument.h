#pragma once

#include <memory>
#include <string>

#include "bait/memory_shelf.h"
#include "files/library_file.h"
#include "shelf/with_places.h"

namespace baitwright {

/// A recipe named on the command line: a name on the shelf, a path (with a `/` or ending in `.toml`), or `-` for
/// standard input. From a file, what else the file holds (ingredients, other mixes, feels) lies on top of the shelf.
struct NamedRecipe {
    Recipe recipe;
    std::unique_ptr<MemoryShelf> on_top;  ///< null for a recipe of the shelf itself
    const Shelf* below = nullptr;
    EntryPlaces places;      ///< where things stand in the file
    std::string file, text;  ///< empty for a recipe of the shelf itself

    [[nodiscard]] const Shelf& shelf() const { return on_top ? *on_top : *below; }
};

/// Finds it. Throws NotFound (with "did you mean", or no such file) and InputError (all faults of the file; a file with
/// no mix, or with several).
NamedRecipe recipe_argument(const std::string& word, const Shelf& shelf);

/// The library file at that path, for its mixes. Throws InputError with every fault of it: those of the file itself,
/// and the names in its faulty mixes that neither it nor the shelf knows, in the file's order.
LibraryFile read_mixes(const std::string& path, const Shelf& shelf);

/// True where the word means a file.
bool means_a_file(const std::string& word);

}  // namespace baitwright
