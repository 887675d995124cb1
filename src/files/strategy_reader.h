#pragma once

#include "bait/strategy.h"
#include "files/entry.h"
#include "files/entry_names.h"
#include "files/toml_reader.h"

namespace baitwright {

/// Reads a strategy, marked `faulty` where the table had a fault; all of them are with its `faults()`.
Entry<Strategy> read_strategy(TableReader& table, EntryNames& names);

}  // namespace baitwright
