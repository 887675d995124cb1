#pragma once

#include <vector>

#include "answers/strategy/brought_before.h"
#include "bait/advice_rule.h"
#include "bait/log_entry.h"

namespace baitwright {

/// What each strategy of the log brought on days like this: of the first fish that is asked for, if the log has it; in
/// water of this clarity, else at this temperature, else in this season, where there were enough sessions, else on any
/// day. Only strategies with 4 sessions or more, held against the mean of the others.
/// **Test**: `tests/answers/brought_for_advice_test.cpp`.
std::vector<BroughtBefore> brought_for_advice(const std::vector<LogEntry>& log, const Circumstances& now);

}  // namespace baitwright
