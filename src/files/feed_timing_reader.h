#pragma once

#include <optional>

#include "bait/strategy.h"
#include "files/toml_reader.h"

namespace baitwright {

/// What a feed is held against: how long the session is, where that could be read, and which paces are stated.
struct SessionFrame {
    std::optional<Time> length;
    bool put_ins = false, fish = false;
};

/// Reads when a feed goes in, from just one of `at`, `every` and `when`, with what goes beside it; what is wrong with
/// that is with the table's `faults()`. What `after` names is looked for once all feeds are read (`feed_order.h`).
FeedTiming read_timing(TableReader& table, const SessionFrame& frame);

}  // namespace baitwright
