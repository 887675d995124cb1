#pragma once

#include "answers/learn/learn_answer.h"
#include "answers/learn/learn_request.h"
#include "bait/shelf.h"

namespace baitwright {

/// What weighed vessels and looks into the water tell, each a factor on what our model says: of an ingredient its loose
/// density (3 % a time); of a mix what a level cup of it weighs (8 % before, 4 % a time), how long it holds (2.5 either
/// way holds 9 in 10 before, 1.3 a time; of a depth, by the time it takes to fall there) and how wide it lies
/// (2, 1.25).
/// **Source**: ours. **Valid for**: what was seen at a feel at which the mix breaks up at all; a cup that came down
/// whole says nothing of when it breaks. **Test**: `tests/answers/learn_factors_test.cpp`.
void learn_looks(const Shelf& shelf, const LearnRequest& request, LearnAnswer& answer);

}  // namespace baitwright
