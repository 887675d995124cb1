#pragma once

#include "cli/command.h"
#include "store/stored_entry.h"

namespace baitwright {

/// Refuses --library for a command that changes the store.
void refuse_folder(const Surroundings& around);

/// Adds all that the TOML or CSV file at `path` holds to the store; it must hold at least one of `kind`.
CommandResult add_file(const Arguments& arguments, const Surroundings& around, EntryKind kind, const std::string& path);

}  // namespace baitwright
