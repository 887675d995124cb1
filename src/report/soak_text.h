#pragma once

#include <string>
#include <vector>

#include "answers/pellets/soak_answer.h"
#include "report/told.h"

namespace baitwright {

/// What to pour, how long, how they will be, and the timetable.
Told soak_told(const SoakAnswer& answer);

/// The same soak in waters of different warmth, side by side.
Told soak_comparison_told(const std::vector<SoakAnswer>& answers);

}  // namespace baitwright
