#pragma once

#include <vector>

#include "bait/learnt.h"

namespace baitwright {

/// The same distribution by as few normals as make it, the bags by the first of them: the Cholesky factor of the
/// covariance of bags, hand and memory in that order, without what is not there to rounding.
/// **Source**: Cholesky's factorisation of a semidefinite matrix, Higham 1990 (from memory). **Test**: products of rows
/// as before, `tests/answers/learnt_doubt_test.cpp`.
LearntWater few_normals(const LearntWater& learnt);

/// What was learnt of the bags of several mixes, out of one store, together.
LearntWater learnt_of_all(const std::vector<const LearntWater*>& learnt);

/// A row of the factor.
std::vector<double> row_of(const LearntWater& learnt, std::size_t row);

}  // namespace baitwright
