#pragma once

#include <string>
#include <vector>

#include "answers/pellets/soak_answer.h"

namespace baitwright {

/// The soak as a picture (SVG), a panel a batch: mean, core and outside against time with the stages marked; for pumped
/// pellets how full their pores are after each stroke.
std::string soak_plot(const SoakAnswer& answer);
/// The same in several waters, one below the other, each pellet over the same time.
std::string soak_plot(const std::vector<SoakAnswer>& answers);

}  // namespace baitwright
