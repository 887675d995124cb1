#pragma once

#include "bait/blend_spec.h"
#include "files/entry.h"
#include "files/entry_names.h"
#include "files/toml_reader.h"

namespace baitwright {

/// Reads a blend, marked `faulty` where the table had a fault; all of them are with its `faults()`.
Entry<BlendSpec> read_blend(TableReader& table, EntryNames& names);

/// Whether only a blend has that key.
bool is_blend_key(std::string_view key);

}  // namespace baitwright
