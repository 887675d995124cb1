#pragma once

#include "answers/plan_session.h"
#include "cli/command.h"

namespace baitwright {

/// The flags of what is asked of a session: its start, the kit, the anglers, what is in the shed.
std::vector<Flag> plan_flags();

PlanRequest plan_request(const Arguments& arguments, const Surroundings& around);

}  // namespace baitwright
