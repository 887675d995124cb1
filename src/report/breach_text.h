#pragma once

#include <string>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// How much of it the plan has, in the unit that the rule was said in: "830 g", "1.5 pt"; what the rounding would make
/// as much as it may be is "just over that".
std::string planned_against(const PlanBreach& breach);

}  // namespace baitwright
