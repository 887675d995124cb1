#pragma once

#include <filesystem>
#include <string>

#include "cli/command.h"

namespace baitwright {

/// Refuses to write over a file that is there unless `--replace` was given: StorageError "file-exists".
void keep_unless_told(const std::string& path, const Arguments& arguments);

/// Refuses to write an answer over the store or what SQLite keeps beside it, --replace or not: UsageError
/// "output-is-store".
void refuse_store_as_output(const CommandSpec& command, const Arguments& arguments, const std::filesystem::path& store);

/// Whether -o is "-", which is standard output. Throws UsageError where that is a terminal, for `what` is no text to be
/// read, and where JSON is to go there too.
bool goes_to_standard_output(const Arguments& arguments, const std::string& what);

}  // namespace baitwright
