#pragma once

#include "answers/learn/learn_answer.h"
#include "answers/learn/learn_request.h"
#include "bait/shelf.h"

namespace baitwright {

/// What the log teaches of the hand, the bags, the pellets and the mixes: maximum a posteriori from the library's
/// values and spreads over all observations at once, so that their order does not matter, by Gauss-Newton in
/// square-root form; covariance by Laplace. Observations beyond three sigma of all others are set aside, but those that
/// are believed.
/// **Test**: `tests/answers/learn_from_log_test.cpp`, against NumPy and SciPy.
LearnAnswer learn_from_log(const Shelf& shelf, const LearnRequest& request);

}  // namespace baitwright
