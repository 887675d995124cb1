#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/pellets/soak_answer.h"
#include "answers/pellets/soak_request.h"
#include "report/told.h"

namespace baitwright {

/// How a soak is told: with the minute of the day at which all is to be ready, if there is one.
struct SoakTelling {
    PortionsWanted portions;
    std::optional<BitesPlanned> bites;
    Ratio spare;
    std::optional<int> ready_at;  ///< minutes since midnight
};

SoakTelling soak_telling(const SoakRequest& request, std::optional<int> ready_at);

/// What to pour, how long, how they will be, and the timetable.
Told soak_told(const SoakAnswer& answer, const SoakTelling& telling);

/// The same soak in waters of different warmth, side by side.
Told soak_comparison_told(const std::vector<SoakAnswer>& answers);

}  // namespace baitwright
