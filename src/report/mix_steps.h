#pragma once

#include <string>
#include <vector>

#include "answers/mix/mix_answer.h"

namespace baitwright {

/// What to do at the bench, in order, each a sentence or two: soak, weigh, first pour, rest, riddle, creep, shape.
std::vector<std::string> mix_steps(const MixAnswer& answer);

/// Those of pellets alone: soak, drain, stand, dress, press.
std::vector<std::string> pellet_steps(const MixAnswer& answer);

}  // namespace baitwright
