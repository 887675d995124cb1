#pragma once

#include <cstddef>
#include <vector>

namespace baitwright {

/// The quantiles of a Beta distribution in a table: x = sin^2 t, with t on 256 even steps from 0 to pi/2, on which
/// every Beta distribution is about as smooth. **Valid for**: parameters above 0; x to about 0.003.
/// **Test**: `tests/answers/catch_model_test.cpp`, against SciPy's `beta.ppf`.
class BetaTable {
public:
    BetaTable(double a, double b);
    /// ln(1 - x) at that share (0..1) of the distribution.
    [[nodiscard]] double log_rest(double share) const;

private:
    std::size_t first_ = 0;        ///< the step of the first entry
    std::vector<double> running_;  ///< of the steps that hold more than e^-25 of the fullest
};

}  // namespace baitwright
