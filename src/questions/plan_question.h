#pragma once

#include <string>

#include "answers/plan/plan_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// What the flags ask for, but the strategy and the venue. Throws UsageError, naming the flag.
PlanRequest plan_request(const Arguments& arguments, Date today);

/// From one time of the day on to the next of the other.
Time minutes_between(int earlier, int later);

}  // namespace baitwright
