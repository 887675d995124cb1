#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/command.h"

namespace baitwright {

/// What baitwright can do, by the job it is for, a line of at most 80 columns each.
std::string help_text();

/// One command with its examples, its words and its flags, and the commands that begin with its name.
std::string help_text(const CommandSpec& command);

/// The examples of a command, one or two.
std::vector<std::string> examples(const CommandSpec& command);

/// What help says of a flag, with what the person always uses in its place: "(default: 100ml; or your usual pump)".
std::string flag_help(const Flag& flag);

/// The commands that begin with a word which is none by itself, such as those of `ingredient`; empty where there are
/// none.
std::string help_of_group(std::string_view word);

}  // namespace baitwright
