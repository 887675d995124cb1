#pragma once

#include "answers/plan/plan_session.h"
#include "cli/command.h"
#include "questions/plan_question.h"

namespace baitwright {

/// The flags of what plans a session: its start, the kit, the venue, the anglers, what is in the shed.
std::vector<Flag> plan_flags();

/// What of the usual had no bearing on this plan: the pump, where nothing is pumped, the tub, where no air
/// dries it.
std::vector<std::string> unheeded_in(const SessionPlan& plan);

/// The plan of the strategy that the first word names, at the venue of --venue.
SessionPlan planned_session(const Arguments& arguments, const Surroundings& around, PlanRequest request);

}  // namespace baitwright
