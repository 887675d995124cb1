#pragma once

#include <SQLiteCpp/Database.h>

#include <filesystem>
#include <string>

#include "answers/shared/store_contents.h"

/// Copies of a store by SQLite's online backup: one state of it, whoever writes meanwhile.
/// **Source**: SQLite, "SQLite Backup API" and "sqlite3_backup_init()" (from memory; tested with writers at work).
namespace baitwright {

/// The file's name for SQLite: a whole one can be neither a URI nor one of its special names.
std::string name_for_sqlite(const std::filesystem::path& path);

/// Opens a store to be read, with what other processes write into it. One on a disk that cannot be written is opened
/// too, where it is one file alone. Throws SQLite::Exception.
SQLite::Database open_to_copy(const std::filesystem::path& path);

/// Copies what `source` sees into the empty file, which then is one file that needs no other beside it, and is still to
/// be flushed to the disk. Throws SQLite::Exception.
void copy_into(SQLite::Database& source, const std::filesystem::path& empty);

/// The first that SQLite's own check finds broken in a copy that nobody else uses; empty where it is whole.
std::string what_is_broken(SQLite::Database& copy);

/// How much it holds, whatever its version.
StoreContents contents_of(SQLite::Database& database);

}  // namespace baitwright
