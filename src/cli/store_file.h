#pragma once

#include <filesystem>

#include "cli/command.h"

namespace baitwright {

/// The store's file, for a command that works on it as a whole: not opened, behind links. Throws
/// UsageError for `--library`.
std::filesystem::path store_file(const Surroundings& around);

}  // namespace baitwright
