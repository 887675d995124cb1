#pragma once

#include <vector>

#include "answers/shared/warning.h"
#include "answers/strategy/unroll_strategy.h"

namespace baitwright {

/// What is not wrong with a strategy, but odd: codes "no-hookbait", "never-fed", "too-wet".
std::vector<Warning> oddities_of(const Strategy& strategy, const UnrolledStrategy& unrolled);

}  // namespace baitwright
