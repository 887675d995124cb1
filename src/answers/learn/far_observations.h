#pragma once

#include <vector>

#include "answers/learn/water_covariance.h"

namespace baitwright {

/// How far an observation lies from what all the others foretell of it, in standard deviations of that foretelling;
/// and the foretold logarithm, the likeliest hand of its day in it.
struct Foretold {
    double sigmas, log_expected;
};

/// All of them: of those that are heeded, by leverage, as if each were left out; of the others straight.
/// t = e / (s sqrt(1 - V/s^2)), V the variance of the observation's sum and its day by all; e / sqrt(s^2 + V) of what
/// is not heeded. **Source**: Cook & Weisberg 1982, Residuals and Influence in Regression (from memory). **Valid for**:
/// observations that are linear over the doubt left. **Test**: `tests/answers/learn_set_aside_test.cpp`, by leaving
/// each out.
std::vector<Foretold> foretold(const WaterProblem& problem, const std::vector<char>& heeded, const WaterFit& fit);

/// The fit of those observations that the others bear out.
struct BorneOut {
    std::vector<char> heeded;
    WaterFit fit;
    std::vector<Foretold> foretold;
};

/// Sets aside the worst beyond three sigma, and with it others as far that it hardly touches; fits again, until there
/// is none; then takes back what has come within three, each once.
BorneOut borne_out(const WaterProblem& problem);

}  // namespace baitwright
