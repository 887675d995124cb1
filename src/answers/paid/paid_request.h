#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/log_entry.h"

namespace baitwright {

/// What ways of feeding are held against each other by.
enum class PaidBy { all, season, clarity, venue, temperature };
/// In that order; the first is typed by nobody.
inline constexpr std::array<std::string_view, 5> paid_by_names{"all", "season", "clarity", "venue", "temperature"};

struct PaidRequest {
    std::vector<LogEntry> log;              ///< all that stand
    std::vector<std::string> strategies{};  ///< only these; empty: all
    std::string fish = {};                  ///< only catches of it; empty: all
    PaidBy by = PaidBy::all;
    std::optional<Date> since = {};  ///< only sessions from that day on
    std::uint64_t seed = 1;
};

}  // namespace baitwright
