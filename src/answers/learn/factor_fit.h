#pragma once

#include <array>
#include <cstddef>
#include <functional>
#include <vector>

namespace baitwright {

/// The logarithm of something that one or two factors on what our model says make, seen with an error.
struct FactorSeen {
    double log_seen, sigma;
    std::size_t entry;  ///< its place in the log
    bool is_sure;       ///< never set aside
};

/// What the model says there of the i-th, and its slope by each factor's logarithm.
struct FactorSlope {
    double log_value;
    std::array<double, 2> slope;
};
using FactorModel = std::function<FactorSlope(std::size_t i, const std::array<double, 2>& at)>;

struct FactorFit {
    std::array<double, 2> mean{}, sigma{};
    std::vector<char> heeded;
    std::vector<double> sigmas;        ///< how far each lies from what the others foretell
    std::vector<double> log_expected;  ///< what they foretell
    [[nodiscard]] int times() const;
};

/// Logarithms of two factors, independent about 0 before anything is seen: the best by Gauss-Newton's steps, the normal
/// approximation there, and what lies beyond three sigma of all others set aside, as `borne_out` does. A single factor
/// has no slope by the second. **Source**: as `best_fit`. **Test**: `tests/answers/learn_factors_test.cpp`, by the
/// conjugate normal's closed form.
FactorFit fit_factors(const std::array<double, 2>& sigma_before, const std::vector<FactorSeen>& seen,
                      const FactorModel& model);

/// One factor: each observation is of it alone. The logarithms seen are those of the factor.
FactorFit fit_factor(double sigma_before, const std::vector<FactorSeen>& seen);

}  // namespace baitwright
