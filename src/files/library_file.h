#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "bait/blend_spec.h"
#include "bait/feel.h"
#include "bait/ingredient.h"
#include "bait/recipe.h"
#include "bait/strategy.h"
#include "bait/venue.h"
#include "quantities/fault.h"

namespace baitwright {

/// A place in a file, both from 1.
struct Position {
    int line = 0;
    int column = 0;
};

/// The places of a record's entries by subject ("part 1", "dose 2", "feel", "name", "feed 3"), so that a fault found
/// later, such as an unknown ingredient, can be shown where it stands.
using EntryPlaces = std::map<std::string, Position>;

/// A recipe as read.
struct RecipeEntry {
    Recipe recipe;
    EntryPlaces places;
    bool faulty = false;  ///< something in it could not be read
};

/// A strategy as read.
struct StrategyEntry {
    Strategy strategy;
    EntryPlaces places;
    bool faulty = false;  ///< something in it could not be read
};

/// The rules of a venue as read.
struct VenueEntry {
    Venue venue;
    EntryPlaces places;
    bool faulty = false;  ///< something in it could not be read
};

/// A blend as read.
struct BlendEntry {
    BlendSpec spec;
    EntryPlaces places;   ///< "candidate 2", "limit 1", "feel", "name"
    bool faulty = false;  ///< something in it could not be read
};

/// What one library file holds, and everything that is wrong with it. Entries with faults are left out;
/// of faulty mixes and strategies their names are kept, so that what the shelf lacks can be told in the same run.
struct LibraryFile {
    std::string name;
    std::vector<Ingredient> ingredients;  ///< as stated, not yet completed
    std::vector<RecipeEntry> recipes;
    std::vector<RecipeEntry> faulty_recipes;  ///< amounts in them mean nothing
    std::vector<StrategyEntry> strategies;
    std::vector<StrategyEntry> faulty_strategies;
    std::vector<BlendEntry> blends;
    std::vector<VenueEntry> venues;
    std::vector<VenueEntry> faulty_venues;
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
