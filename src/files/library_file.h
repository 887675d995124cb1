#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "bait/blend_spec.h"
#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "bait/venue.h"
#include "files/entry.h"
#include "quantities/fault.h"

namespace baitwright {

/// What one library file holds, and everything that is wrong with it. Entries with faults are left out;
/// of faulty mixes and strategies their names are kept, so that what the shelf lacks can be told in the same run.
struct LibraryFile {
    std::string name;
    std::vector<Ingredient> ingredients;  ///< as stated, not yet completed
    std::vector<Entry<Recipe>> recipes;
    std::vector<Entry<Recipe>> faulty_recipes;  ///< amounts in them mean nothing
    std::vector<Entry<Strategy>> strategies;
    std::vector<Entry<Strategy>> faulty_strategies;
    std::vector<Entry<BlendSpec>> blends;
    std::vector<Entry<Venue>> venues;
    std::vector<Entry<Venue>> faulty_venues;
    std::vector<Feel> feels;
    std::vector<Fault> faults;  ///< in the order of the file
};

/// Reads the TOML of a library file (`docs/files.md`): ingredients, mixes, strategies, venues, blends, feels, or
/// several of them. Never throws for what a person wrote: every fault is returned with file, line, column, the line
/// itself and a hint. No file, clock or thread is touched, so that the phone can use it too.
LibraryFile read_library_file(std::string_view text, std::string file_name);

/// Gives faults that carry a subject the place of that subject in the file; others the file's name alone.
void place_faults(std::vector<Fault>& faults, const EntryPlaces& places, std::string_view text,
                  std::string_view file_name);

}  // namespace baitwright
