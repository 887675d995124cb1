#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/shared/range.h"
#include "answers/shared/warning.h"
#include "bait/log_entry.h"
#include "quantities/money.h"

namespace baitwright {

/// What ways of feeding are held against each other by.
enum class PaidBy { all, season, clarity, venue, temperature };

struct PaidRequest {
    std::vector<LogEntry> log;              ///< all that stand
    std::vector<std::string> strategies{};  ///< only these; empty: all
    std::string fish = {};                  ///< only catches of it; empty: all
    PaidBy by = PaidBy::all;
    std::uint64_t seed = 1;
};

/// A way of feeding over its sessions. Ranges hold 9 in 10.
struct PaidStrategy {
    std::string name;
    int sessions = 0, blanks = 0;
    Time hours{};
    Mass caught{};
    int fish = 0;
    std::optional<Money> cost;                     ///< of the sessions whose cost is known; nothing where none is
    int priced = 0;                                ///< how many these are
    Range<double> kilos_an_hour{};                 ///< to be expected of a session, pooled; kg an hour and angler
    std::optional<Range<double>> kilos_a_pound{};  ///< to be expected for each unit of money; nothing without costs
    double best = 0;                               ///< P(it brings most an hour)
};

/// Whether one way beats another, and how sure that is.
struct PaidVerdict {
    std::string better, than;
    double probability = 0.5;            ///< that `better` brings more an hour
    Range<double> times{};               ///< how many times as much
    bool is_sure = false;                ///< enough sessions, and more than 0.95
    std::optional<int> more_sessions{};  ///< of each, until it would be told, if the difference is what it seems;
                                         ///< nothing: none to speak of, or more than 99
};

struct PaidGroup {
    std::string of;                        ///< "winter", "tinged", a venue, "8 to 12 degC"; empty: all
    std::vector<PaidStrategy> strategies;  ///< the best an hour first
    std::optional<PaidVerdict> verdict;    ///< of the first two
    std::optional<PaidVerdict> money{};    ///< the same for each unit of money
};

struct PaidAnswer {
    std::vector<PaidGroup> groups;
    int sessions = 0;
    const Currency* currency = nullptr;
    std::vector<Warning> warnings;
};

}  // namespace baitwright
