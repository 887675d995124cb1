#pragma once

#include <vector>

#include "answers/plan/plan_answer.h"
#include "bait/strategy.h"

namespace baitwright {

/// What experience says about a session like this, each with its reason: never imposed, and reckoned into nothing.
/// **Source**: common practice, no source.
std::vector<PlanAdvice> plan_advice(const Strategy& strategy, const SessionPlan& plan);

}  // namespace baitwright
