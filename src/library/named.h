#pragma once

#include <memory>
#include <string>
#include <vector>

#include "bait/bait_called.h"
#include "bait/memory_shelf.h"
#include "files/library_file.h"
#include "library/open_library.h"
#include "quantities/fault.h"

/// What a person names on the command line: by its name, by a path (with a `/` or ending in `.toml`), or by `-` for a
/// file on standard input. From a file, what else the file holds (ingredients, mixes, feels) lies on top of the shelf.
namespace baitwright {

/// A recipe, a strategy, a venue or a blend that was named, with the places of its file for faults found later.
template <class T>
struct Named {
    T value;
    std::unique_ptr<MemoryShelf> on_top;  ///< null where it is not from a file of its own
    const Shelf* below = nullptr;
    EntryPlaces places;      ///< where things stand in the file
    std::string file, text;  ///< empty where it is not from a file of its own

    [[nodiscard]] const Shelf& shelf() const { return on_top ? *on_top : *below; }
};

/// True where the word means a file.
bool means_a_file(const std::string& word);

/// Each finds what the word names. Throws NotFound (with "did you mean", or no such file) and InputError: all faults of
/// the file; a file with none of the kind, or with several.
Named<Recipe> named_recipe(const std::string& word, const Shelf& shelf);
/// A mix, or one ingredient, which is a mix of one. Throws UsageError too, as `bait_called` does.
Named<Recipe> named_bait(const std::string& word, const Shelf& shelf, BaitUse use);
Named<Strategy> named_strategy(const std::string& word, const Shelf& shelf);
/// One of `all_blends`.
Named<BlendSpec> named_blend(const std::string& word, const LibraryPlace& place, const Shelf& shelf);
/// Likewise one of `all_venues`. Throws InputError with the names in its rules that the shelf does not know, too.
Named<Venue> named_venue(const std::string& word, const LibraryPlace& place, const Shelf& shelf);

/// All that can be named, in the order of their names: those of the folder that is read in place of the store (throws
/// InputError where a file has faults); those of the store; the shipped ones where the place is neither.
std::vector<BlendSpec> all_blends(const LibraryPlace& place);
std::vector<Venue> all_venues(const LibraryPlace& place);

/// The name of the venue or blend of the store that the word means. Throws NotFound.
std::string written_name(const Store& store, EntryKind kind, const std::string& word);

/// The library file at that path. Throws InputError with every fault of it: those of the file itself, and the names in
/// its faulty entries that neither it nor the shelf knows, in the file's order.
LibraryFile read_entries(const std::string& path, const Shelf& shelf);

/// Runs the work; an InputError out of it gets the places of the file that what was named came from, if any, before it
/// goes on.
template <class T, class Work>
auto with_places(const Named<T>& named, Work&& work) {
    try {
        return work();
    } catch (const InputError& error) {
        if (named.file.empty()) throw;
        std::vector<Fault> faults = error.faults();
        place_faults(faults, named.places, named.text, named.file);
        throw InputError(std::move(faults));
    }
}

}  // namespace baitwright
