#pragma once

#include <string>
#include <vector>

#include "cli/command.h"

namespace baitwright {

/// Sorts what follows the command's name. Only the options of this one command are built. Throws UsageError with "did
/// you mean" for an unknown flag, a missing value, a word too few or too many.
Arguments parse_arguments(const CommandSpec& command, const std::vector<std::string>& given);

}  // namespace baitwright
