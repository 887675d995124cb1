#pragma once

#include <string>

#include "answers/plan/plan_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// What the flags ask for, but the strategy and the venue. Throws UsageError, naming the flag.
PlanRequest plan_request(const Arguments& arguments, Date today);

/// So many pairs of hands, 1 to 10; the way to the water, up to 24 h, or none. Throw InputError.
int read_hands(const std::string& text);
Time read_travel(const std::string& text);

/// From one time of the day on to the next of the other.
Time minutes_between(int earlier, int later);

}  // namespace baitwright
