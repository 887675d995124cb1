#pragma once

#include <string>
#include <vector>

#include "cli/command.h"

namespace baitwright {

/// A line for each flag that was typed and is going: what to type in its place. It works all the same.
std::string old_flags_told(const CommandSpec& command, const std::vector<std::string>& given);

}  // namespace baitwright
