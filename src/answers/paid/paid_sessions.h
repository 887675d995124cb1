#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/paid/paid_answer.h"

namespace baitwright {

/// A session of the log that can be held against others.
struct PaidSession {
    Date on;
    LoggedSession session;
    Mass caught{};
    int fish = 0;
};

/// What the log has, and why some of it is of no use here.
struct PaidSessions {
    std::vector<PaidSession> usable;
    std::vector<Warning> warnings;
};

/// The sessions that are asked for, each with its catches. Without a catch, or with catches of nothing, it is a blank.
/// Left out and told: without a strategy or a length, or with fish that were counted but not weighed.
/// Throws NotFound "unknown-strategy" for one that the log has no session of, and UsageError "unknown-fish" for a fish
/// that it has no catch of, where it has any sessions.
PaidSessions paid_sessions(const PaidRequest& request);

/// Whether the log has a catch of that fish, in the singular or the plural.
bool has_catch_of(const std::vector<LogEntry>& log, const std::string& fish);

/// Which of the groups a session belongs to; empty: it does not say. Seasons by the month, as common practice has them
/// in the north: winter from December to February. Water below 8, to 12, to 18 and above, common practice, no source.
std::string group_of(const PaidSession& session, PaidBy by);

/// The groups in the order in which they are told; empty where it is the alphabet.
std::vector<std::string> known_groups(PaidBy by);

}  // namespace baitwright
