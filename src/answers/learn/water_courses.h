#pragma once

#include <vector>

#include "answers/learn/learn_water.h"

namespace baitwright {

/// How the hand and the marks seen most often became known: after up to 40 of the days on which they were seen (fewer
/// where many bags make each costly), by what was not set aside in the end; and what each observation says by itself.
std::vector<LearntCourse> water_courses(const WaterTaught& taught, const LearnRequest& request);

}  // namespace baitwright
