#pragma once

#include <memory>
#include <string>

#include "bait/memory_shelf.h"
#include "bait/strategy.h"
#include "files/library_file.h"
#include "shelf/with_places.h"

namespace baitwright {

/// A strategy named on the command line: as `recipe_argument.h` has it of a recipe.
struct NamedStrategy {
    Strategy strategy;
    std::unique_ptr<MemoryShelf> on_top;  ///< null for a strategy of the shelf itself
    const Shelf* below = nullptr;
    EntryPlaces places;
    std::string file, text;  ///< empty for a strategy of the shelf itself

    [[nodiscard]] const Shelf& shelf() const { return on_top ? *on_top : *below; }
};

/// Finds it. Throws NotFound (with "did you mean", or no such file) and InputError (all faults of the file; a file with
/// no strategy, or with several).
NamedStrategy strategy_argument(const std::string& word, const Shelf& shelf);

}  // namespace baitwright
