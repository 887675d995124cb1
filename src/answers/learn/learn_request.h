#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/log_entry.h"
#include "bait/stock.h"

namespace baitwright {

/// A bag that came into the shed: from that day on it is another bag.
struct NewBag {
    std::string of;
    Date on;
};

struct LearnRequest {
    std::vector<LogEntry> log;      ///< all that stand
    std::vector<NewBag> bags = {};  ///< of the shed; those of the log are in it
    Date today{};
};

}  // namespace baitwright
