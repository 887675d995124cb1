#pragma once

#include <vector>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// What is kept ready for when bites slow, in the order of the strategy; none of it is among the put-ins.
std::vector<PlannedSlowFeed> planned_slow_feeds(const UnrolledStrategy& session);

/// The put-ins by which balls are shaped before the start: those of the clock, and of each feed for slow bites the
/// first, which is kept ready.
std::vector<PlannedFeed> ready_at_start(const SessionPlan& plan);

}  // namespace baitwright
