#include "answers/mix/points_of_draws.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>

#include "physics/normal_quantile.h"
#include "physics/small_exponentials.h"

namespace baitwright {

namespace {

std::vector<double> logarithms_of(const std::vector<double>& numbers) {
    const std::size_t count = numbers.size();
    std::vector<double> logarithms(count);
    const double* const from = numbers.data();
    double* const to = logarithms.data();
    constexpr double least = std::numeric_limits<double>::min();
    for (std::size_t i = 0; i < count; ++i) to[i] = quick_logarithm(from[i] < least ? least : from[i]);
    return logarithms;
}

/// The draws as the sums over them need them.
struct Rows {
    const std::vector<double>&by_shared, &fixed;
    std::vector<double> log_by_shared;
    double most_fixed = 0;  ///< whatever its sign

    explicit Rows(const Draws& draws)
        : by_shared(draws.by_shared), fixed(draws.fixed), log_by_shared(logarithms_of(draws.by_shared)) {
        for (const double value : fixed) most_fixed = std::max(most_fixed, std::abs(value));
    }
};

/// The log-normal of the same mean and variance, as a place to start from.
struct Fit {
    double mean_log, sigma;
    double deviation;  ///< standard, of what is wanted
    [[nodiscard]] double quantile(double normal) const { return std::exp(mean_log + sigma * normal); }
};

Fit fit_of(const Rows& draws, double shared_sigma) {
    const double first = std::exp(shared_sigma * shared_sigma / 2), second = std::exp(2 * shared_sigma * shared_sigma);
    double mean = 0, square = 0;
    for (std::size_t i = 0; i < draws.fixed.size(); ++i) {
        const double by_shared = draws.by_shared[i], fixed = draws.fixed[i];
        mean += by_shared * first + fixed;
        square += by_shared * by_shared * second + 2 * by_shared * fixed * first + fixed * fixed;
    }
    const auto count = static_cast<double>(draws.fixed.size());
    mean /= count;
    const double variance = std::max(square / count - mean * mean, 1e-18);
    mean = std::max(mean, 1e-9);
    const double sigma = std::sqrt(std::log1p(variance / (mean * mean)));
    return {std::log(mean) - sigma * sigma / 2, sigma, std::sqrt(variance)};
}

/// The standard normal's probability up to x and its density at x. erfc of the library takes ten times as long.
/// **Source**: Abramowitz & Stegun 1964, 26.2.17, within 7.5e-8 (from memory; a million plain draws hold
/// what comes of it).
struct NormalUpTo {
    double probability, density;
};

inline NormalUpTo normal_up_to(double x) {
    const double density = quick_exponential(-x * x / 2) * (std::numbers::inv_sqrtpi / std::numbers::sqrt2);
    const double t = 1 / (1 + 0.2316419 * std::abs(x));
    const double beyond =
        density * t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    return {0.5 + std::copysign(0.5 - beyond, x), density};
}

/// log(1 - r) of a small r, as most draws have it, by its series; 2e-6 at the most.
inline double log_of_rest(double r) {
    return -r * (1 + r * (1.0 / 2 + r * (1.0 / 3 + r / 4)));
}

/// P(wanted <= q) and its slope in q, the shared factor integrated.
struct Below {
    double probability, slope;
};

/// So many draws are looked at together. By plain pointers throughout: an array's check of each place would have the
/// compiler work on one at a time.
constexpr std::size_t at_once = 64;
using AtOnce = std::array<double, at_once>;

/// What is left of q for the shared factor: its inverse, for the slope, and its logarithm. Where little is fixed, by
/// series; the inverse within a thousandth.
void rests_of(const double* fixed, std::size_t count, double q, double* inverse, double* logarithm) {
    const double log_q = std::log(q), share = 1 / q;
    for (std::size_t i = 0; i < count; ++i) {
        const double r = fixed[i] * share;
        inverse[i] = share * (1 + r * (1 + r));
        logarithm[i] = log_q + log_of_rest(r);
    }
}

/// The same where much is. Where nothing is left, a logarithm that no probability lies below.
void rests_of_little(const double* fixed, std::size_t count, double q, double* inverse, double* logarithm) {
    for (std::size_t i = 0; i < count; ++i) {
        const bool left = q - fixed[i] > 0;
        inverse[i] = left ? 1 / (q - fixed[i]) : 0;
        logarithm[i] = left ? std::log(q - fixed[i]) : -std::numeric_limits<double>::max();
    }
}

/// The probabilities and slopes of so many draws, in the places of the logarithms and the inverses of their rests.
void probabilities_of(double* inverse, double* logarithm, const double* log_by_shared, std::size_t count,
                      double scale) {
    for (std::size_t i = 0; i < count; ++i) {
        const NormalUpTo normal = normal_up_to(scale * (logarithm[i] - log_by_shared[i]));
        logarithm[i] = normal.probability;
        inverse[i] *= normal.density;
    }
}

Below below(const Rows& draws, double shared_sigma, double q) {
    const double scale = 1 / shared_sigma;
    const std::size_t all = draws.fixed.size();
    const auto rests = draws.most_fixed < 0.1 * q ? rests_of : rests_of_little;
    AtOnce slopes, probabilities;  // NOLINT(cppcoreguidelines-pro-type-member-init): filled below
    double probability = 0, slope = 0;
    for (std::size_t first = 0; first < all; first += at_once) {
        const std::size_t count = std::min(at_once, all - first);
        rests(&draws.fixed[first], count, q, slopes.data(), probabilities.data());
        probabilities_of(slopes.data(), probabilities.data(), &draws.log_by_shared[first], count, scale);
        probability += std::reduce(probabilities.data(), probabilities.data() + count, 0.0);
        slope += std::reduce(slopes.data(), slopes.data() + count, 0.0);
    }
    const auto count = static_cast<double>(all);
    return {probability / count, slope * scale / count};
}

/// A point of what is wanted, by Newton's steps from the log-normal fit. A step of `close` standard deviations leaves
/// an error of its square or so.
class PointFinder {
public:
    PointFinder(const Rows& draws, const Fit& fit, double shared_sigma, double least)
        : draws_(draws), fit_(fit), shared_sigma_(shared_sigma), least_(least) {}

    [[nodiscard]] double point(double p) const {
        constexpr double close = 0.03;
        double low = least_, high = std::numeric_limits<double>::infinity();
        double q = std::max(fit_.quantile(normal_quantile(p)), least_ + 0.1 * fit_.deviation);
        bool least_is_below = false;
        for (int step = 0; step < most_steps; ++step) {
            const Below here = below(draws_, shared_sigma_, q);
            (here.probability < p ? low : high) = q;
            const double newton = q + (p - here.probability) / here.slope;
            if (!least_is_below && !(newton > least_)) {
                if (below(draws_, shared_sigma_, least_).probability >= p) return least_;
                least_is_below = true;
            }
            const double next = newton > low && newton < high ? std::min(newton, q + farthest * fit_.deviation)
                                : high < infinite             ? (low + high) / 2
                                                              : q + fit_.deviation;
            if (std::abs(next - q) <= close * fit_.deviation && next == newton) return next;
            if (high - low <= close * close * fit_.deviation) return next;
            q = next;
        }
        return q;
    }

private:
    static constexpr int most_steps = 60;
    static constexpr double farthest = 4;  // standard deviations
    static constexpr double infinite = std::numeric_limits<double>::infinity();
    const Rows& draws_;
    Fit fit_;
    double shared_sigma_, least_;
};

}  // namespace

Range<Ratio> points_of(const Draws& draws, double shared_sigma, double least) {
    const Rows rows(draws);
    const PointFinder finder(rows, fit_of(rows, shared_sigma), shared_sigma, least);
    return {finder.point(0.05), finder.point(0.5), finder.point(0.95)};
}

}  // namespace baitwright
