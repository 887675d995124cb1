#pragma once

#include <string>
#include <string_view>

#include "cli/command.h"

namespace baitwright {

/// What baitwright can do, and how to call it.
std::string help_text();

/// One command with its words and flags, and the commands that begin with its name.
std::string help_text(const CommandSpec& command);

/// The commands that begin with a word which is none by itself, such as those of `ingredient`; empty where there are
/// none.
std::string help_of_group(std::string_view word);

}  // namespace baitwright
