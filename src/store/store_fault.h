#pragma once

#include <SQLiteCpp/Exception.h>

#include <cstdint>
#include <filesystem>
#include <string>

#include "quantities/fault.h"

/// What the store says when it fails. SQLite's errors become ours here and nowhere else.
namespace baitwright {

/// The file's name as messages show it: quoted, what a terminal would obey written out, never cut.
std::string shown(const std::filesystem::path& path);

StorageError storage_error(const SQLite::Exception& error, const std::filesystem::path& path);

/// The file opens, but what it holds cannot be what the program wrote.
StorageError damaged_store(const std::filesystem::path& path, const std::string& finding);

/// Whether it says that.
bool is_damage(const StorageError& error);

/// An older program stored a number that is none of a bait: names the entry, what is wrong and how it is mended. Of
/// class bad_data.
StorageError stored_out_of_range(const std::string& ingredient, const std::string& finding);
StorageError stored_mix_out_of_range(const std::string& mix, const std::string& finding);
StorageError stored_strategy_out_of_range(const std::string& strategy, const std::string& finding);
StorageError stored_log_out_of_range(std::int64_t entry, const std::string& finding);
/// `subject` is an ingredient, a mix or "your hand".
StorageError stored_learnt_out_of_range(const std::string& subject, const std::string& finding);

/// Throws NotFound "no-store" where no file is there.
void refuse_no_store(const std::filesystem::path& path);

/// The file, or the folder that it is to stand in, cannot be made or written.
StorageError cannot_make_store(const std::filesystem::path& path, const std::string& reason);

}  // namespace baitwright
