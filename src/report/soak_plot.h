#pragma once

#include <string>

#include "answers/soak_answer.h"

namespace baitwright {

/// The soak as a picture (SVG), a panel a batch: mean, core and outside against time with the stages marked; for pumped
/// pellets how full their pores are after each stroke.
std::string soak_plot(const SoakAnswer& answer);

}  // namespace baitwright
