#pragma once

#include "answers/plan/plan_answer.h"
#include "report/told.h"

namespace baitwright {

/// The jobs before the start, those of the evening before first, and when to begin.
Told prep_told(const SessionPlan& plan);

}  // namespace baitwright
