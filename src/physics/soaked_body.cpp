#include "physics/soaked_body.h"

// NOLINTNEXTLINE(modernize-deprecated-headers): j0 and j1 are POSIX's, <cmath> need not have them
#include <math.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr double shortest_soak = 1e-6;
// Below these the forms for short times hold: what they leave out is exp(-1/Fo), for the cylinder Fo^2/8.
constexpr double sheet_short = 0.02, cylinder_short = 1e-5, sphere_short = 0.01;
constexpr double shortest_drain = 1e-8;
constexpr double negligible_exponent = 39;  // exp(-39) = 1e-17
constexpr int kept_eigenvalues = 32;
constexpr std::size_t kept_drain_terms = 10;

double dimensions(BodyShape shape) {
    return shape == BodyShape::sheet ? 1 : shape == BodyShape::cylinder ? 2 : 3;
}

/// The m-th zero of J_order by McMahon's expansion, good to 1e-14 from the sixteenth on.
double mcmahon_zero(int order, int m) {
    const double mu = 4.0 * order * order, beta = (m + 0.5 * order - 0.25) * std::numbers::pi, e = 8 * beta,
                 square = e * e;
    const double first = (mu - 1) / e;
    const double second = 4 * (7 * mu - 31) / (3 * square);
    const double third = 32 * (83 * mu * mu - 982 * mu + 3779) / (15 * square * square);
    const double fourth =
        64 * (6949 * mu * mu * mu - 153855 * mu * mu + 1585743 * mu - 6277237) / (105 * square * square * square);
    return beta - first * (1 + second + third + fourth);
}

/// The same by Newton's method from there, where the expansion alone is not as good: J0' = -J1, J1' = J0 - J1/x.
double bessel_zero(int order, int m) {
    constexpr int from_here_by_expansion = 16, steps = 6;
    double zero = mcmahon_zero(order, m);
    for (int step = 0; m < from_here_by_expansion && step < steps; ++step) {
        const double j0_there = j0(zero), j1_there = j1(zero);
        zero += order == 0 ? j0_there / j1_there : j1_there / (j1_there / zero - j0_there);
    }
    return zero;
}

double tangent_root(int m) {
    const double middle = (m + 0.5) * std::numbers::pi;
    double root = middle - 1 / middle;
    for (int step = 0; step < 4; ++step) root -= (std::sin(root) - root * std::cos(root)) / (root * std::sin(root));
    return root;
}

double find_held(BodyShape shape, int m) {
    if (shape == BodyShape::sheet) return (m - 0.5) * std::numbers::pi;
    return shape == BodyShape::cylinder ? bessel_zero(0, m) : m * std::numbers::pi;
}

double find_closed(BodyShape shape, int m) {
    if (shape == BodyShape::sheet) return m * std::numbers::pi;
    return shape == BodyShape::cylinder ? bessel_zero(1, m) : tangent_root(m);
}

/// The first eigenvalues of the three bodies, found once.
using Eigenvalues = std::array<std::array<double, kept_eigenvalues>, 3>;

template <class Find>
Eigenvalues first_eigenvalues(Find find) {
    Eigenvalues all{};
    for (const BodyShape shape : {BodyShape::sheet, BodyShape::cylinder, BodyShape::sphere})
        for (int m = 1; m <= kept_eigenvalues; ++m)
            all[static_cast<std::size_t>(shape)][static_cast<std::size_t>(m - 1)] = find(shape, m);
    return all;
}

/// The m-th closed shape, 1 in the middle, at mu times the distance from there.
double closed_shape(BodyShape shape, double at) {
    if (shape == BodyShape::sheet) return std::cos(at);
    if (shape == BodyShape::cylinder) return j0(at);
    return at > 0 ? std::sin(at) / at : 1;
}

double find_closed_at_surface(BodyShape shape, int m) {
    return closed_shape(shape, closed_eigenvalue(shape, m));
}

/// What the m-th closed shape has at the surface, kept like the eigenvalues.
double closed_at_surface(BodyShape shape, int m) {
    static const Eigenvalues first = first_eigenvalues(find_closed_at_surface);
    return m <= kept_eigenvalues ? first[static_cast<std::size_t>(shape)][static_cast<std::size_t>(m - 1)]
                                 : find_closed_at_surface(shape, m);
}

}  // namespace

double held_eigenvalue(BodyShape shape, int m) {
    static const Eigenvalues first = first_eigenvalues(find_held);
    return m <= kept_eigenvalues ? first[static_cast<std::size_t>(shape)][static_cast<std::size_t>(m - 1)]
                                 : find_held(shape, m);
}

double closed_eigenvalue(BodyShape shape, int m) {
    static const Eigenvalues first = first_eigenvalues(find_closed);
    return m <= kept_eigenvalues ? first[static_cast<std::size_t>(shape)][static_cast<std::size_t>(m - 1)]
                                 : find_closed(shape, m);
}

Ratio missing_after_soak(BodyShape shape, Ratio fourier_number) {
    const double fourier = fourier_number, root = std::sqrt(fourier / std::numbers::pi);
    if (shape == BodyShape::sheet && fourier < sheet_short) return 1 - 2 * root;
    if (shape == BodyShape::cylinder && fourier < cylinder_short) return 1 - 4 * root + fourier + root * fourier / 3;
    if (shape == BodyShape::sphere && fourier < sphere_short) return 1 - 6 * root + 3 * fourier;
    double sum = 0;
    for (int n = 1;; ++n) {
        const double lambda = held_eigenvalue(shape, n), lambda_squared = lambda * lambda,
                     exponent = lambda_squared * fourier;
        if (exponent > negligible_exponent) return 2 * dimensions(shape) * sum;
        sum += std::exp(-exponent) / lambda_squared;
    }
}

SoakedBody::SoakedBody(BodyShape shape, Ratio fourier_number) : shape_(shape) {
    if (!(fourier_number >= shortest_soak && is_finite(fourier_number)))
        throw InputError("out-of-range", "the soak is too short to be worked out", "soak it at least a few seconds");
    for (int n = 1;; ++n) {
        const double lambda = held_eigenvalue(shape, n), exponent = lambda * lambda * fourier_number;
        soak_.push_back({lambda * lambda, std::exp(-exponent)});
        if (exponent > negligible_exponent) break;
    }
    mean_ = 2 * dimensions(shape) * sum_with(0);
    for (std::size_t m = 1; m <= kept_drain_terms; ++m) drain_.push_back(drain_term(static_cast<int>(m)));
}

double SoakedBody::sum_with(double mu_squared) const {
    double sum = 0;
    for (const SoakTerm& term : soak_) sum += term.decay / (term.lambda_squared - mu_squared);
    return sum;
}

SoakedBody::DrainTerm SoakedBody::drain_term(int m) const {
    const double mu = closed_eigenvalue(shape_, m), at_surface = 4 * sum_with(mu * mu);
    return {mu, at_surface / closed_at_surface(shape_, m), at_surface};
}

/// As it comes out of the water, by the soak's own series.
double SoakedBody::missing_core_at_once() const {
    double core = 0;
    for (std::size_t i = 0; i < soak_.size(); ++i) {
        const double lambda = std::sqrt(soak_[i].lambda_squared), sign = i % 2 ? -1 : 1;
        double weight = 2 * sign;                                    // sphere
        if (shape_ == BodyShape::sheet) weight = 2 * sign / lambda;  // (4/pi) (-1)^n / (2n + 1)
        if (shape_ == BodyShape::cylinder) weight = 2 / (lambda * j1(lambda));
        core += weight * soak_[i].decay;
    }
    return core;
}

SoakedBody::Missing SoakedBody::missing(Ratio drained) const {
    if (!(drained > 0)) return {missing_core_at_once(), 0};  // nothing is missing at the surface yet
    if (drained < shortest_drain)  // too short to reach the core; at the surface it goes with the square root of time
        return {missing_core_at_once(), missing(shortest_drain).surface * std::sqrt(drained / shortest_drain)};
    Missing all{mean_, mean_};
    for (std::size_t m = 1;; ++m) {
        const DrainTerm term = m <= drain_.size() ? drain_[m - 1] : drain_term(static_cast<int>(m));
        const double exponent = term.mu * term.mu * drained;
        if (exponent > negligible_exponent) return all;
        const double decay = std::exp(-exponent);
        all.core += term.core * decay;
        all.surface += term.surface * decay;
    }
}

Ratio SoakedBody::missing_inside(Ratio distance, Ratio drained) const {
    double missing = mean_;
    for (std::size_t m = 1;; ++m) {
        const DrainTerm term = m <= drain_.size() ? drain_[m - 1] : drain_term(static_cast<int>(m));
        const double exponent = term.mu * term.mu * drained;
        missing += term.core * closed_shape(shape_, term.mu * distance) * std::exp(-exponent);
        if (exponent > negligible_exponent) return missing;
    }
}

}  // namespace baitwright
