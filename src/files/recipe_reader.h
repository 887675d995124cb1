#pragma once

#include "bait/recipe.h"
#include "files/entry.h"
#include "files/entry_names.h"
#include "files/toml_reader.h"

namespace baitwright {

/// Reads a mix, marked `faulty` where the table had a fault; all of them are with its `faults()`.
Entry<Recipe> read_recipe(TableReader& table, EntryNames& names);

/// Whether the key `feel` names the feel of a mix. At the top of a file it may head blocks instead.
bool names_a_feel(const TableReader& table);

}  // namespace baitwright
