#pragma once

#include <filesystem>
#include <string>

#include "cli/command.h"

namespace baitwright {

/// The store's file, for a command that works on it as a whole: not opened, behind links. Throws
/// UsageError for `--library`.
std::filesystem::path store_file(const Surroundings& around);

/// The command that restores that file into the store of this run, as it is typed.
std::string command_to_restore(const Arguments& arguments, const std::string& file);

}  // namespace baitwright
