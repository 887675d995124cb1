#include "library/all_faults.h"

#include <algorithm>
#include <tuple>

#include "bait/memory_shelf.h"
#include "bait/recipe_names.h"
#include "bait/strategy_names.h"
#include "bait/suggesting_shelf.h"
#include "bait/venue_names.h"
#include "files/file_faults.h"

namespace baitwright {

std::vector<Fault> all_faults(LibraryFile& file, const std::string& text, const Shelf& shelf) {
    MemoryShelf on_top(&shelf);
    for (Ingredient& ingredient : file.ingredients) on_top.put(std::move(ingredient));
    for (const Entry<Recipe>& entry : file.recipes) on_top.put(entry.value);
    for (const Entry<Recipe>& entry : file.faulty_recipes) on_top.put(entry.value);  // their names are there
    std::vector<Fault> faults = std::move(file.faults);
    const SuggestingShelf suggesting(on_top);
    std::size_t told = 0;  // unknown names of the entries gone through
    const auto add = [&](const auto& entry, const EntryPlaces& places) {
        std::vector<Fault> names = unknown_names(entry, suggesting.after(told));
        told += names.size();
        place_faults(names, places, {}, file.name);
        faults.insert(faults.end(), names.begin(), names.end());
    };
    for (const Entry<Recipe>& entry : file.faulty_recipes) add(entry.value, entry.places);
    told = 0;  // each sort of entry may stand first in the file
    for (const Entry<Strategy>& entry : file.faulty_strategies) add(entry.value, entry.places);
    told = 0;
    for (const Entry<Venue>& entry : file.faulty_venues) add(entry.value, entry.places);
    std::stable_sort(faults.begin(), faults.end(), [](const Fault& a, const Fault& b) {
        return std::tie(a.more, a.line, a.column) < std::tie(b.more, b.line, b.column);
    });
    faults = first_faults(std::move(faults));
    LineWalker lines(text);
    for (Fault& fault : faults)
        if (fault.line > 0) fault.source_line = lines.line(fault.line);
    return faults;
}

}  // namespace baitwright
