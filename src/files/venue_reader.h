#pragma once

#include "bait/venue.h"
#include "files/entry.h"
#include "files/entry_names.h"
#include "files/toml_reader.h"

namespace baitwright {

/// Reads the rules of a venue, marked `faulty` where the table had a fault; all of them are with its `faults()`.
Entry<Venue> read_venue(TableReader& table, EntryNames& names);

}  // namespace baitwright
