#pragma once

#include <vector>

#include "bait/feel.h"

namespace baitwright {

/// How closely a hand reads a feel: the standard deviation of the wetness, a third of the feel's band. The driest band
/// begins at nothing and the wettest runs to the end of the scale, which no hand means: these count as no wider than
/// the widest between them, or than 0.25 where there is none. **Source**: ours.
/// **Test**: `tests/bait/felt_wetness_test.cpp`.
Ratio reading_spread(const std::vector<Feel>& feels, const Feel& feel);

}  // namespace baitwright
