#pragma once

#include <cstdint>
#include <string>

#include "answers/shared/log_request.h"
#include "questions/arguments.h"

namespace baitwright {

/// What is to go into the log, as words and flags say; names as they were typed. All throw UsageError, naming the flag:
/// what cannot be read, what is missing, and what cannot be (`bait/log_limits.h`).
MixToLog mix_to_log(const Arguments& arguments);
/// Of a mix that has a feel: that it was said.
void require_feel(const LoggedMix& mix);
LoggedSoak soak_to_log(const Arguments& arguments);
LoggedWeight weight_to_log(const Arguments& arguments);
LoggedLook look_to_log(const Arguments& arguments);

/// A session of that strategy, and what is told of it.
PlannedSession planned_to_log(const Arguments& arguments, const std::string& strategy);
CatchToLog catch_to_log(const Arguments& arguments);

/// The number of an entry. Throws UsageError.
std::int64_t read_log_number(const std::string& text);

}  // namespace baitwright
