#pragma once

#include <filesystem>
#include <memory>
#include <optional>

#include "bait/memory_shelf.h"
#include "store/store.h"

namespace baitwright {

/// Which library a run reads: the store at a path, or every TOML file below a folder in place of it.
struct LibraryPlace {
    std::filesystem::path store;
    std::optional<std::filesystem::path> folder;
    /// The store, opened ahead to look into; the first that opens it takes it. Null, or empty, where it is not.
    std::shared_ptr<std::optional<Store>> ahead = {};
};

/// Opens it. A store that is new, or was filled by another program, is given the shipped entries it lacks; what a
/// person put there is never overwritten. A folder makes no store; feels it does not define are the shipped ones.
/// Throws InputError with every fault of every file, NotFound for a folder that is not there, StorageError.
std::unique_ptr<Shelf> open_library(const LibraryPlace& place);

/// The store alone, filled likewise, for commands that change it.
Store open_store(const std::filesystem::path& path);
Store open_store(const LibraryPlace& place);

/// What the person always uses. Nothing where a folder is read or there is no store yet; else the store is opened
/// ahead.
Usual usual_of(LibraryPlace& place);

/// The ingredient as it is shipped, whatever a person has put in its place; nothing where none of that name is.
std::optional<Ingredient> shipped_ingredient(std::string_view name);

/// The shipped entries on a shelf in memory.
std::unique_ptr<MemoryShelf> shipped_shelf();

}  // namespace baitwright
