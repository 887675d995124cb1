#pragma once

#include <memory>
#include <string>

#include "bait/memory_shelf.h"
#include "shelf/library.h"
#include "shelf/with_places.h"

namespace baitwright {

/// A blend named on the command line: the name of one that is shipped (or stands in the folder that is read in place of
/// the store), a path (with a `/` or ending in `.toml`), or `-` for standard input. The ingredients of its file lie on
/// top of the shelf.
struct NamedBlend {
    BlendSpec spec;
    std::unique_ptr<MemoryShelf> on_top;  ///< null where it is not from a file of its own
    const Shelf* below = nullptr;
    EntryPlaces places;      ///< where things stand in the file
    std::string file, text;  ///< empty where it is not from a file of its own

    [[nodiscard]] const Shelf& shelf() const { return on_top ? *on_top : *below; }
};

/// Finds it. Throws NotFound (with "did you mean", or no such file) and InputError (all faults of the file; a file with
/// no blend, or with several).
NamedBlend blend_argument(const std::string& word, const LibraryPlace& place, const Shelf& shelf);

/// Every blend that can be named: those of the folder, or the shipped ones.
std::vector<BlendSpec> all_blends(const LibraryPlace& place);

}  // namespace baitwright
