#pragma once

#include <string>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// A moment of the session, in words that text, sheet and phone share: "09:30" where there is a clock, else counted
/// from the first put-in: "the start", "2 h 20 min", "1 h 5 min before".
std::string session_moment(const SessionPlan& plan, Time at);

/// The same where it is plain that it is before the start: "08:25", "1 h 5 min". Of a clock a day earlier, "16:30 the
/// day before"; of two, "16:30 two days before".
std::string moment_before(const SessionPlan& plan, Time at);

/// How long hands are busy before the start, in all, to the minute: "37 min".
std::string work_text(const SessionPlan& plan);

}  // namespace baitwright
