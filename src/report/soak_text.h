#pragma once

#include <string>
#include <vector>

#include "answers/pellets/soak_answer.h"
#include "report/told.h"

namespace baitwright {

/// What to pour, how long, how they will be, and the timetable.
Told soak_told(const SoakAnswer& answer);
std::string soak_text(const SoakAnswer& answer);

/// The same soak in waters of different warmth, side by side.
Told soak_comparison_told(const std::vector<SoakAnswer>& answers);
std::string soak_comparison_text(const std::vector<SoakAnswer>& answers);

}  // namespace baitwright
