#pragma once

#include <string>

#include "cli/command.h"

namespace baitwright {

/// The versions of an entry that were replaced, newest first, as `show --old` tells them; `kind` is "ingredient", "mix"
/// or "strategy".
CommandResult old_versions(const Arguments& arguments, const Surroundings& around, const std::string& kind);

}  // namespace baitwright
