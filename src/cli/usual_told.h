#pragma once

#include "cli/command.h"

namespace baitwright {

/// Gives the command's flags that were not typed what is usual for the person.
void give_usual(Arguments& arguments, const CommandSpec& command, Usual usual);

/// Says in the answer which of what is usual it used: a last line of a text, a key "usual" of JSON, on the side of a
/// table for a spreadsheet.
void tell_usual(CommandResult& result, const Arguments& arguments);

}  // namespace baitwright
