#pragma once

#include "bait/strategy.h"
#include "files/entry.h"
#include "files/feed_timing_reader.h"
#include "files/toml_reader.h"

namespace baitwright {

/// Reads one [[feed]]; what is wrong with it is with the table's `faults()`. The places of its entries go into `places`
/// under the subjects of `strategy_names.h`; `number` counts from 1.
Feed read_feed(TableReader& table, std::size_t number, const SessionFrame& frame, EntryPlaces& places);

/// Reads one [[hookbait]].
Hookbait read_hookbait(TableReader& table, std::size_t number, EntryPlaces& places);

}  // namespace baitwright
