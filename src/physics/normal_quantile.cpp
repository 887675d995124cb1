#include "physics/normal_quantile.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace baitwright {

namespace {

constexpr double half_of_the_centre = 0.425;

/// A factor times one polynomial over another, from the highest coefficient down, both at once: neither waits for the
/// other.
template <std::size_t N>
[[gnu::always_inline]] inline double polynomial_ratio(double factor, const std::array<double, N>& above,
                                                      const std::array<double, N>& below, double x) {
    double numerator = above[N - 1];
    double denominator = below[N - 1];
    for (std::size_t i = N - 1; i-- > 0;) {
        numerator = numerator * x + above[i];
        denominator = denominator * x + below[i];
    }
    return factor * numerator / denominator;
}

[[gnu::always_inline]] inline double central(double q) {
    constexpr std::array<double, 8> a = {3.3871328727963666080e0, 1.3314166789178437745e2, 1.9715909503065514427e3,
                                         1.3731693765509461125e4, 4.5921953931549871457e4, 6.7265770927008700853e4,
                                         3.3430575583588128105e4, 2.5090809287301226727e3};
    constexpr std::array<double, 8> b = {1.0,
                                         4.2313330701600911252e1,
                                         6.8718700749205790830e2,
                                         5.3941960214247511077e3,
                                         2.1213794301586595867e4,
                                         3.9307895800092710610e4,
                                         2.8729085735721942674e4,
                                         5.2264952788528545610e3};
    const double r = 0.180625 - q * q;
    return polynomial_ratio(q, a, b, r);
}

double near_tail(double r) {
    constexpr std::array<double, 8> c = {1.42343711074968357734e0,  4.63033784615654529590e0, 5.76949722146069140550e0,
                                         3.64784832476320460504e0,  1.27045825245236838258e0, 2.41780725177450611770e-1,
                                         2.27238449892691845833e-2, 7.74545014278341407640e-4};
    constexpr std::array<double, 8> d = {1.0,
                                         2.05319162663775882187e0,
                                         1.67638483018380384940e0,
                                         6.89767334985100004550e-1,
                                         1.48103976427480074590e-1,
                                         1.51986665636164571966e-2,
                                         5.47593808499534494600e-4,
                                         1.05075007164441684324e-9};
    return polynomial_ratio(1, c, d, r - 1.6);
}

double far_tail(double r) {
    constexpr std::array<double, 8> e = {
        6.65790464350110377720e0,  5.46378491116411436990e0,  1.78482653991729133580e0,  2.96560571828504891230e-1,
        2.65321895265761230930e-2, 1.24266094738807843860e-3, 2.71155556874348757815e-5, 2.01033439929228813265e-7};
    constexpr std::array<double, 8> f = {1.0,
                                         5.99832206555887937690e-1,
                                         1.36929880922735805310e-1,
                                         1.48753612908506148525e-2,
                                         7.86869131145613259100e-4,
                                         1.84631831751005468180e-5,
                                         1.42151175831644588870e-7,
                                         2.04426310338993978564e-15};
    return polynomial_ratio(1, e, f, r - 5);
}

}  // namespace

double normal_quantile(Ratio probability) {
    const double p = probability;
    const double q = p - 0.5;
    if (std::abs(q) <= half_of_the_centre) return central(q);
    const double tail = q < 0 ? p : 1 - p;
    if (!(tail > 0)) {
        if (tail < 0 || std::isnan(tail)) return std::numeric_limits<double>::quiet_NaN();
        return std::copysign(std::numeric_limits<double>::infinity(), q);
    }
    const double r = std::sqrt(-std::log(tail));
    const double size = r <= 5 ? near_tail(r) : far_tail(r);
    return std::copysign(size, q);
}

void normal_quantiles(std::span<double> probabilities) {
    constexpr std::size_t at_once = 128;
    std::array<std::size_t, at_once> tails;  // NOLINT(cppcoreguidelines-pro-type-member-init): filled below
    std::array<double, at_once> of_tails;    // NOLINT(cppcoreguidelines-pro-type-member-init): filled below
    for (std::size_t first = 0; first < probabilities.size(); first += at_once) {
        const std::size_t count = std::min(at_once, probabilities.size() - first);
        double* const row = &probabilities[first];
        // Which are not of the centre, one in seven, found without a branch, of which the processor would guess many
        // wrongly.
        std::size_t many = 0;
        for (std::size_t i = 0; i < count; ++i) {
            tails[many] = i;
            many += std::abs(row[i] - 0.5) <= half_of_the_centre ? 0 : 1;
        }
        for (std::size_t i = 0; i < many; ++i) of_tails[i] = normal_quantile(row[tails[i]]);
        // As if all were of the centre, which the compiler works out several at a time; then the others.
        for (std::size_t i = 0; i < count; ++i) row[i] = central(row[i] - 0.5);
        for (std::size_t i = 0; i < many; ++i) row[tails[i]] = of_tails[i];
    }
}

double log_normal_sigma(Ratio relative_spread) {
    return std::sqrt(std::log1p(relative_spread * relative_spread));
}

}  // namespace baitwright
