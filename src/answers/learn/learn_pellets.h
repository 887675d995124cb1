#pragma once

#include "answers/learn/learn_answer.h"
#include "answers/learn/learn_request.h"
#include "bait/shelf.h"

namespace baitwright {

/// What weighed soaks tell of a pellet: ln D at 15 degC and ln C, before it with the pellet's own spreads. A soak says
/// (drained - dry)/dry = film + C F(D a(T) t), off by 5 % of what was gained; F is the uptake of the cylinder, a
/// Arrhenius's factor. **Valid for**: soaks that gained more than the film. **Test**:
/// `tests/answers/learn_factors_test.cpp`.
void learn_pellets(const Shelf& shelf, const LearnRequest& request, LearnAnswer& answer);

}  // namespace baitwright
