#pragma once

#include <string>

#include "cli/command.h"
#include "cli/terminal.h"

namespace baitwright {

/// The answer as the terminal takes it: its letters, its colours. What is for programs and files stays as it is.
std::string dressed_answer(const CommandResult& result, const TerminalWishes& wishes);

/// An error, or a word aside, likewise.
std::string dressed_errors(const std::string& told, const TerminalWishes& wishes);

/// Shows a long list, or help, in a pager; false where it is none, none is wanted, or it is not to be had.
bool paged(const CommandResult& result, const std::string& dressed, const TerminalWishes& wishes);

}  // namespace baitwright
