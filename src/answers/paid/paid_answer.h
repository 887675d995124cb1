#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/paid/paid_request.h"
#include "answers/shared/range.h"
#include "answers/shared/warning.h"
#include "quantities/money.h"

namespace baitwright {

/// From where on a difference is spoken of: below that chance there is none to speak of.
inline constexpr double worth_speaking = 0.75;
/// What is sure is surer than that, from at least so many sessions of each.
inline constexpr double sure_chance = 0.95;
inline constexpr int fewest_sessions = 4;

/// A way of feeding over its sessions. Ranges hold 9 in 10.
struct PaidStrategy {
    std::string name;
    int sessions = 0, blanks = 0;
    Time hours{};
    Mass caught{};
    int fish = 0;
    std::optional<Money> cost;      ///< of the sessions whose cost is known; nothing where none is
    int priced = 0;                 ///< how many these are
    Range<double> kilos_an_hour{};  ///< to be expected of a session, pooled; kg an hour and angler; 0 where none of
                                    ///< the group ever caught anything
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
    PaidBy by = PaidBy::all;
    std::string fish;  ///< that alone was looked at; empty: all
    std::vector<PaidGroup> groups;
    int sessions = 0;
    const Currency* currency = nullptr;
    std::vector<Warning> warnings;
};

}  // namespace baitwright
