#include "shelf/all_faults.h"

#include <algorithm>
#include <tuple>

#include "bait/memory_shelf.h"
#include "bait/recipe_names.h"
#include "bait/strategy_names.h"
#include "bait/venue_names.h"

namespace baitwright {

std::vector<Fault> all_faults(LibraryFile& file, const std::string& text, const Shelf& shelf) {
    MemoryShelf on_top(&shelf);
    for (Ingredient& ingredient : file.ingredients) on_top.put(std::move(ingredient));
    for (const RecipeEntry& entry : file.recipes) on_top.put(entry.recipe);
    for (const RecipeEntry& entry : file.faulty_recipes) on_top.put(entry.recipe);  // their names are there
    std::vector<Fault> faults = std::move(file.faults);
    const auto add = [&](std::vector<Fault> names, const EntryPlaces& places) {
        place_faults(names, places, text, file.name);
        faults.insert(faults.end(), names.begin(), names.end());
    };
    for (const RecipeEntry& entry : file.faulty_recipes) add(unknown_names(entry.recipe, on_top), entry.places);
    for (const StrategyEntry& entry : file.faulty_strategies) add(unknown_names(entry.strategy, on_top), entry.places);
    for (const VenueEntry& entry : file.faulty_venues) add(unknown_names(entry.venue, on_top), entry.places);
    std::stable_sort(faults.begin(), faults.end(), [](const Fault& a, const Fault& b) {
        return std::tie(a.line, a.column) < std::tie(b.line, b.column);
    });
    return faults;
}

}  // namespace baitwright
