#pragma once

#include <string>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// "1 stroke", "9 strokes".
std::string stroke_count(int strokes);

/// How a plan's pellets are pumped: "9 strokes of the pump", "6 lots, 8 strokes each".
std::string pump_words(const PlannedSoak& soak);

}  // namespace baitwright
