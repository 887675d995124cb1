#pragma once

#include <vector>

#include "answers/pellets/soak_answer.h"

namespace baitwright {

/// What one pair of hands does to have every batch ready at the same minute: pour on, drain, pump. No two tasks lie
/// closer than a minute; where they would, the batch that takes less time starts earlier and stands longer, which does
/// no harm. The earliest first.
std::vector<SoakTask> soak_timetable(const std::vector<SoakedAnswer>& soaked, const std::vector<PumpedAnswer>& pumped,
                                     SoakMethod method);

/// Pumping a lot and letting it lie until it has drunk. **Source**: default, from memory.
inline constexpr Time pumping_time = Time::from_si(600);

}  // namespace baitwright
