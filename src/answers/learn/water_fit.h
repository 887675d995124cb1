#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "answers/learn/water_unknowns.h"

namespace baitwright {

/// The logarithm of sum weight x exp(form) was seen, off by an error of its own and, where it has one, by the hand of
/// its day.
struct WaterSeen {
    struct Term {
        double weight;  ///< g
        std::size_t form;
        std::size_t bag;  ///< whose mark it is
        enum class Mark { absorption, gap } mark;
    };
    std::vector<Term> terms;
    double log_seen = 0, sigma = 1;
    std::optional<std::size_t> day;         ///< counted from 0
    std::optional<std::size_t> entry = {};  ///< its place in the log; nothing: a mark that was measured
    bool is_sure = false;                   ///< never set aside
};

struct WaterProblem {
    WaterUnknowns unknowns;
    std::vector<WaterSeen> seen;  ///< in an order that does not depend on how they were written down
    std::size_t days = 0;
};

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

/// The best fit: Gauss-Newton's steps, halved where they would lead uphill, with each day's hand taken out in closed
/// form: of observations i of one day with weights w_i and slopes J_i, sum w J J' - v v'/(1/s^2 + sum w), v = sum w J.
/// **Source**: Gelman et al., Bayesian Data Analysis, ch. 4 (normal approximation at the mode; from memory); Bierman
/// 1977 (square-root information; from memory). **Valid for**: `start` empty (the prior's middle) or of as many numbers
/// as there are unknowns. **Test**: `tests/answers/learn_from_log_test.cpp`, against NumPy and SciPy.
WaterFit best_fit(const WaterProblem& problem, FitFrom from);

/// The value of an observation's sum by what was learnt, and its slope.
struct SumSlope {
    double log_value;
    LinearForm slope;
};
SumSlope slope_of(const WaterUnknowns& unknowns, const std::vector<WaterSeen::Term>& terms,
                  const std::vector<double>& at);
double value_of(const LinearForm& form, const std::vector<double>& at);

/// The covariance of the unknowns, all of it.
class WaterCovariance {
public:
    explicit WaterCovariance(const WaterFit& fit);
    [[nodiscard]] double of(const LinearForm& a, const LinearForm& b) const;
    [[nodiscard]] double of(const LinearForm& a) const { return of(a, a); }
    /// With each of the unknowns.
    [[nodiscard]] std::vector<double> with(const LinearForm& form) const;

private:
    std::size_t count_;
    std::vector<double> all_;
};

/// a + factor x b
LinearForm sum_of(const LinearForm& a, const LinearForm& b, double factor);

/// A row for each of the forms, so that the covariance of two is the product of theirs.
std::vector<double> factor_rows(const WaterFit& fit, const std::vector<const LinearForm*>& forms);

}  // namespace baitwright
