#pragma once

#include <SQLiteCpp/Exception.h>

#include <filesystem>
#include <string>

#include "quantities/fault.h"

/// What the store says when it fails. SQLite's errors become ours here and nowhere else.
namespace baitwright {

/// The file's name as messages show it: quoted, control characters replaced by '?', never cut.
std::string shown(const std::filesystem::path& path);

StorageError storage_error(const SQLite::Exception& error, const std::filesystem::path& path);

/// The file opens, but what it holds cannot be what the program wrote.
StorageError damaged_store(const std::filesystem::path& path, const std::string& finding);

/// The file, or the folder that it is to stand in, cannot be made or written.
StorageError cannot_make_store(const std::filesystem::path& path, const std::string& reason);

}  // namespace baitwright
