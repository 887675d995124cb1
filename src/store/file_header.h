#pragma once

#include <SQLiteCpp/Database.h>

#include <filesystem>

namespace baitwright {

/// Refuses a file that is not a store of ours by the first 100 bytes as they lie on the disk: before SQLite itself
/// reads anything, since that could bring another program's file up to date. Throws StorageError: empty, not SQLite's,
/// another program's, cut off within a page, or (bad_data) of a version above `newest`.
/// **Source**: SQLite, "Database File Format", 1.3 The Database Header (from memory; tested against the sqlite3 shell).
void refuse_what_is_no_store(SQLite::Database& database, const std::filesystem::path& path, int newest);

/// Says that a newer program made the store.
[[noreturn]] void refuse_newer_store(const std::filesystem::path& path, int version);

}  // namespace baitwright
