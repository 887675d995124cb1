#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <span>

namespace baitwright {

/// out[k] = exp(scale[k] x[k]) for a whole row of draws at once. Where every argument is within -1..1, as for spreads
/// below a third, exp(x) = exp(x/4)^4 with the Taylor series to the seventh power (2e-9 relative), and the compiler
/// works on several at a time; a row with a larger argument goes through std::exp. Three times as fast as std::exp one
/// by one, which was a third of the time of a water range.
/// **Valid for**: spans of one length. **Test**: against std::exp.
inline void exponentials(std::span<const double> scale, std::span<const double> x, std::span<double> out) {
    constexpr std::array<double, 7> coefficients{1.0 / 720, 1.0 / 120, 1.0 / 24, 1.0 / 6, 1.0 / 2, 1.0, 1.0};
    // By plain pointers: a span's check of each place would have the compiler work on one at a time.
    const std::size_t count = x.size();
    const double *const scales = scale.data(), *const xs = x.data();
    double* const results = out.data();
    std::uint64_t outside = 0;  // as wide as a double, so that the compiler can take several at a time
    for (std::size_t k = 0; k < count; ++k) {
        results[k] = scales[k] * xs[k];
        outside |= std::abs(results[k]) > 1 ? 1U : 0U;
    }
    if (outside != 0) {
        for (std::size_t k = 0; k < count; ++k) results[k] = std::exp(results[k]);
        return;
    }
    for (std::size_t k = 0; k < count; ++k) {
        const double quarter = 0.25 * results[k];
        double sum = 1.0 / 5040;
        for (const double coefficient : coefficients) sum = coefficient + quarter * sum;
        const double squared = sum * sum;
        results[k] = squared * squared;
    }
}

}  // namespace baitwright
