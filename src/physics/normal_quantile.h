#pragma once

#include <span>

#include "quantities/quantity.h"

namespace baitwright {

/// The standard normal quantile, to about 1e-16 relative.
/// **Source**: Wichura 1988, Applied Statistics 37:477, algorithm AS 241, routine PPND16 (coefficients from memory,
/// compared with SciPy's `ndtri` in the tests). **Valid for**: 0 < p < 1; -inf and +inf at the ends, NaN outside.
double normal_quantile(Ratio probability);

/// Of a whole row of probabilities at once, each in its place: the same numbers, in two thirds of the time.
void normal_quantiles(std::span<double> probabilities);

/// The spread of log x for a log-normal x of that relative standard deviation: sigma = sqrt(ln(1 + spread^2)).
double log_normal_sigma(Ratio relative_spread);

}  // namespace baitwright
