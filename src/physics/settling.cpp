#include "physics/settling.h"

#include <algorithm>
#include <cmath>

#include "physics/water.h"

namespace baitwright {

StillWater::StillWater(Temperature temperature)
    : density(water_density(temperature)), viscosity(water_viscosity(temperature)) {}

Ratio haider_levenspiel_drag(Ratio reynolds, Ratio sphericity) {
    constexpr double highest = 2.6e5;
    const double re = std::min<double>(reynolds, highest), s = sphericity;
    if (s >= 1) return 24 / re * (1 + 0.1806 * std::pow(re, 0.6459)) + 0.4251 / (1 + 6880.95 / re);
    const double a = std::exp(2.3288 - 6.4581 * s + 2.4486 * s * s);
    const double b = 0.0964 + 0.5565 * s;
    const double c = std::exp(4.905 - 13.8944 * s + 18.4222 * s * s - 10.2599 * s * s * s);
    const double d = std::exp(1.4681 + 12.2584 * s - 20.7322 * s * s + 15.8855 * s * s * s);
    return 24 / re * (1 + a * std::pow(re, b)) + c / (1 + d / re);
}

Speed terminal_speed(Length diameter, Density density, const StillWater& water, Ratio sphericity) {
    const double excess = (density - water.density) / water.density;
    if (excess == 0) return {};
    const double d = diameter.si(), nu = water.viscosity.si() / water.density.si();
    // Re^2 Cd does not hang on the speed; Newton's steps in log Re, along which it is nearly a straight line.
    const double wanted = std::log(4 * std::abs(excess) * standard_gravity * d * d * d / (3 * nu * nu));
    const auto log_of = [&](double log_re) {
        return 2 * log_re + std::log(double(haider_levenspiel_drag(std::exp(log_re), sphericity)));
    };
    double log_re = wanted - std::log(24.0);  // Stokes
    if (log_re > 0) log_re = std::min(log_re, 0.5 * (wanted - std::log(0.44)));
    for (int step = 0; step < 40; ++step) {
        constexpr double h = 1e-5;
        const double here = log_of(log_re), slope = (log_of(log_re + h) - here) / h;
        const double move = (wanted - here) / slope;
        log_re += move;
        if (std::abs(move) < 1e-12) break;
    }
    return Speed::from_si(std::copysign(std::exp(log_re) * nu / d, excess));
}

Speed ferguson_church_speed(Length diameter, Ratio excess_density, const StillWater& water) {
    constexpr double c1 = 18, c2 = 1;
    const double d = diameter.si(), nu = water.viscosity.si() / water.density.si();
    const double weight = std::abs(double(excess_density)) * standard_gravity;
    const double speed = weight * d * d / (c1 * nu + std::sqrt(0.75 * c2 * weight * d * d * d));
    return Speed::from_si(std::copysign(speed, double(excess_density)));
}

}  // namespace baitwright
