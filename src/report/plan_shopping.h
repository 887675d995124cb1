#pragma once

#include <string>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// What to buy for a plan: packs, then what has no price, with its amount.
std::string shopping_text(const StrategyCost& cost);

/// What a plan costs; at the least, where something has no price.
std::string plan_cost_text(const SessionPlan& plan);

}  // namespace baitwright
