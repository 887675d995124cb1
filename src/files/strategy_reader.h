#pragma once

#include "files/entry_names.h"
#include "files/library_file.h"
#include "files/toml_reader.h"

namespace baitwright {

/// Reads a strategy, marked `faulty` where the table had a fault; all of them are with its `faults()`.
StrategyEntry read_strategy(TableReader& table, EntryNames& names);

}  // namespace baitwright
