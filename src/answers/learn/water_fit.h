#pragma once

#include <vector>

#include "answers/learn/water_seen.h"

namespace baitwright {

/// Where the unknowns are likeliest, and Cholesky's factor of the information there, so many rows of as many.
struct WaterFit {
    std::vector<double> best;
    std::vector<double> lower;
    std::vector<double> day;         ///< of each day, the likeliest hand
    std::vector<double> day_weight;  ///< and what tells of it: 1/its variance where all else is known
};

/// How a fit is come by: from where, of which observations, and until a step is less than this.
struct FitFrom {
    std::vector<double> start;
    const std::vector<char>& heeded;
    double least_step = 1e-14;
};

/// The best fit: steps of Newton, or where the sum bends the wrong way of Gauss and Newton, halved where they would
/// lead uphill, with each day's hand taken out in closed form: of observations i of one day with weights w_i and slopes
/// J_i, sum w J J' - v v'/(1/s^2 + sum w), v = sum w J.
/// **Source**: Gelman et al., Bayesian Data Analysis, ch. 4 (normal approximation at the mode; from memory); Bierman
/// 1977 (square-root information; from memory). **Valid for**: `start` empty (the prior's middle) or of as many numbers
/// as there are unknowns. **Test**: `tests/answers/learn_from_log_test.cpp`, against NumPy and SciPy.
WaterFit best_fit(const WaterProblem& problem, FitFrom from);

/// One step of Gauss and Newton towards it, with the information of where it began: near enough to tell what lies far
/// off. `least_step` is not read.
WaterFit fit_by_a_step(const WaterProblem& problem, FitFrom from);

/// What the first observations alone say, up to each of the ends (rising, each the end of a day), by the slopes where
/// all lead to: exact where all is linear.
std::vector<WaterFit> fits_up_to(const WaterProblem& problem, const std::vector<char>& heeded, const WaterFit& all,
                                 const std::vector<std::size_t>& ends);

}  // namespace baitwright
