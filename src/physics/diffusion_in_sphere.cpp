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
    const double decay = std::numbers::pi * std::numbers::pi * fourier;
    double sum = 0;
    for (int n = 1; n <= 40; ++n) {
        const double term = std::exp(-n * n * decay) / (n * n);
        sum += term;
        if (term < 1e-17) break;
    }
    return 1 - 6 / (std::numbers::pi * std::numbers::pi) * sum;
}

Ratio fourier_number_of_uptake(Ratio share) {
    if (share <= 0) return 0.0;
    if (!(share < 1)) throw InputError("out-of-range", "full saturation is reached only after endless time", "ask for less than 100 %");
    const auto miss = [share](double fourier) { return sphere_uptake(fourier) - share; };
    const double late = std::max(1.0, -std::log1p(-share));
    std::uintmax_t steps = 100;
    const auto [low, high] =
        boost::math::tools::toms748_solve(miss, 0.0, late, boost::math::tools::eps_tolerance<double>(50), steps);
    return 0.5 * (low + high);
}

Ratio arrhenius_factor(MolarEnergy activation_energy, Temperature temperature) {
    constexpr double reference_kelvin = 288.15;
    const double per_gas_constant = activation_energy.in(joule_per_mole) / gas_constant;
    return std::exp(-per_gas_constant * (1 / temperature.in_kelvin() - 1 / reference_kelvin));
}

}  // namespace baitwright
