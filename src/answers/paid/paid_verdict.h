#pragma once

#include <cstddef>
#include <vector>

#include "answers/paid/catch_model.h"
#include "answers/paid/paid_answer.h"

namespace baitwright {

/// The ways by what is to be expected of a session, the most first.
std::vector<std::size_t> best_first(const DrawnTakings& drawn, std::size_t ways);

/// Whether one way brings more than the other, without their names. Where both bring the same
/// in a world, it counts half for each. It is sure with 4 sessions of each and a chance above 0.95.
/// `more_sessions` takes the middle of `times` for what the difference seems: with n sessions of each more its error is
/// d = sqrt(v (1 / n_1 + 1 / n_2)), v the variance of one session, and the chance of no difference at all goes by the
/// likelihoods of ln(times) with and without one. **Source**: ours; normal approximation of the same model.
/// **Test**: `tests/answers/what_paid_test.cpp`; how often it is right: docs/method.md, "What paid".
PaidVerdict verdict_of(const DrawnTakings& drawn, const std::vector<Takings>& ways, std::size_t ahead,
                       std::size_t other);

}  // namespace baitwright
