#pragma once

#include <optional>
#include <string>

#include "answers/plan_session.h"
#include "cli/command.h"

namespace baitwright {

/// The flags of what plans a session: its start, the kit, the venue, the anglers, what is in the shed.
std::vector<Flag> plan_flags();

/// What they ask for, but the strategy and the venue.
PlanRequest plan_request(const Arguments& arguments, const Surroundings& around);

/// The plan of the strategy that the first word names, at the venue of --venue.
SessionPlan planned_session(const Arguments& arguments, const Surroundings& around, PlanRequest request);

/// 1 where the plan breaks a rule or cannot be carried out, else 0.
int plan_status(const SessionPlan& plan);

/// "11:20" and not "110 min".
bool is_clock(const std::string& text);
/// From one time of the day on to the next of the other.
Time minutes_between(int earlier, int later);

}  // namespace baitwright
