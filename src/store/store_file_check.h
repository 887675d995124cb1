#pragma once

#include <filesystem>
#include <vector>

#include "answers/shared/store_health.h"
#include "quantities/date.h"

namespace baitwright {

/// What can be wrong with a store's file before it is opened as a store: what SQLite itself finds damaged, and files
/// that runs which were stopped left beside it. Fills in how much it holds. Throws NotFound "no-store", and
/// StorageError for what is no store, or of a newer program.
StoreFindings look_at_store_file(const std::filesystem::path& store, StoreContents& contents);

/// Whether SQLite can open it and it is of this program's version, whatever else may be wrong with it.
bool opens_as_it_is(const std::filesystem::path& store);

/// The files beside it that were left.
std::vector<std::filesystem::path> left_beside(const std::filesystem::path& store);

/// Takes them away; and makes the indexes of a damaged store anew, from its tables.
void mend_store_file(const std::filesystem::path& store);

/// How a copy is made: what SQLite reads, or byte for byte.
enum class StoreState { sound, damaged };

/// A copy of the store as `NAME.before-mend-YYYY-MM-DD`.
std::filesystem::path copy_before_mending(const std::filesystem::path& store, StoreState state, Date today);

}  // namespace baitwright
