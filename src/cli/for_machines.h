#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "cli/command.h"

/// What no person types, and help does not list: shells ask what may come next, the build for the manual pages.
namespace baitwright {

/// "complete", "manual".
bool is_for_machines(std::string_view word);

/// `complete WORD...` prints a line for each thing that may stand in place of the last word, and behind a tab what is
/// said of it; a line `files` or `folders` behind a tab where the shell is to offer those. `complete --bash BREAKS
/// LINE` prints them as bash is to put them behind what is typed (`typed_line.h`). It never fails: it prints nothing.
/// `manual`, `manual COMMAND` prints a page of the manual in roff, `manual --to FOLDER` writes all of them there.
CommandResult run_for_machines(const std::vector<std::string>& given);

}  // namespace baitwright
