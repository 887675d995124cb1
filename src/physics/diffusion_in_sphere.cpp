#include "physics/diffusion_in_sphere.h"

#include <boost/math/tools/roots.hpp>
#include <cmath>
#include <numbers>

#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double gas_constant = 8.314462618;  // J/(mol K), CODATA 2018
constexpr double short_time_limit = 0.01;

}  // namespace

Ratio sphere_uptake(Ratio fourier_number) {
    const double fourier = fourier_number;
    if (fourier <= 0) return 0.0;
    if (fourier < short_time_limit) return 6 * std::sqrt(fourier / std::numbers::pi) - 3 * fourier;
    // exp(-n^2 x) from the one before: its factor exp(-(2n - 1) x) in turn changes by exp(-2 x).
    const double each = std::exp(-std::numbers::pi * std::numbers::pi * fourier), twice = each * each;
    double sum = 0, power = 1, step = each;
    for (int n = 1; n <= 40; ++n) {
        power *= step;
        step *= twice;
        const double term = power / (n * n);
        sum += term;
        if (term < 1e-17) break;
    }
    return 1 - 6 / (std::numbers::pi * std::numbers::pi) * sum;
}

Ratio fourier_number_of_uptake(Ratio share) {
    if (share <= 0) return 0.0;
    if (!(share < 1))
        throw InputError("out-of-range", "full saturation is reached only after endless time",
                         "ask for less than 100 %");
    const auto miss = [share](double fourier) { return sphere_uptake(fourier) - share; };
    // From where the short-time form, or the slowest term alone, has the share: within a few parts in a thousand.
    const double root_pi = std::sqrt(std::numbers::pi), square = std::numbers::pi * std::numbers::pi;
    const double short_root = share / 3 / (1 / root_pi + std::sqrt(std::max(0.0, 1 / std::numbers::pi - share / 3)));
    const double guess = share < 0.8 ? short_root * short_root : std::log(6 / square / (1 - share)) / square;
    double early = guess / 1.01, late = guess * 1.01;
    while (miss(early) > 0) early *= 0.5;
    while (miss(late) < 0) late *= 2;
    std::uintmax_t steps = 100;
    const auto [low, high] =
        boost::math::tools::toms748_solve(miss, early, late, boost::math::tools::eps_tolerance<double>(50), steps);
    return 0.5 * (low + high);
}

Ratio arrhenius_factor(MolarEnergy activation_energy, Temperature temperature) {
    constexpr double reference_kelvin = 288.15;
    const double per_gas_constant = activation_energy.in(joule_per_mole) / gas_constant;
    return std::exp(-per_gas_constant * (1 / temperature.in_kelvin() - 1 / reference_kelvin));
}

}  // namespace baitwright
