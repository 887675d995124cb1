#pragma once

#include <string>

#include "cli/command.h"
#include "store/stored_entry.h"

namespace baitwright {

/// The versions of an entry that were replaced or removed, newest last, as `show --old` tells them.
CommandResult old_versions(const Arguments& arguments, const Surroundings& around, EntryKind kind);

/// What `show --toml` prints. Throws UsageError where another form was asked for as well.
CommandResult as_toml(const Arguments& arguments, const std::string& text);

/// --old and --toml.
std::vector<Flag> show_flags();

}  // namespace baitwright
