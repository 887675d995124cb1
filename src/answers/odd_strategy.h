#pragma once

#include <vector>

#include "answers/unroll_strategy.h"
#include "answers/warning.h"

namespace baitwright {

/// What is not wrong with a strategy, but odd: codes "no-hookbait", "never-fed", "too-wet".
std::vector<Warning> oddities_of(const Strategy& strategy, const UnrolledStrategy& unrolled);

}  // namespace baitwright
