#include "physics/water.h"

#include <array>
#include <cmath>

#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double critical_kelvin = 647.096;

/// One coefficient H_ij of R12-08, table 2.
struct Coefficient {
    int i, j;
    double value;
};
constexpr std::array<Coefficient, 21> by_density{
    {{0, 0, 5.20094e-1},  {1, 0, 8.50895e-2},  {2, 0, -1.08374},    {3, 0, -2.89555e-1}, {0, 1, 2.22531e-1},
     {1, 1, 9.99115e-1},  {2, 1, 1.88797},     {3, 1, 1.26613},     {5, 1, 1.20573e-1},  {0, 2, -2.81378e-1},
     {1, 2, -9.06851e-1}, {2, 2, -7.72479e-1}, {3, 2, -4.89837e-1}, {4, 2, -2.57040e-1}, {0, 3, 1.61913e-1},
     {1, 3, 2.57399e-1},  {0, 4, -3.25372e-2}, {3, 4, 6.98452e-2},  {4, 5, 8.72102e-3},  {3, 6, -4.35673e-3},
     {5, 6, -5.93264e-4}}};

}  // namespace

Density water_density(Temperature temperature) {
    const double t = temperature.in_celsius();
    const double off = t - 3.983035;
    return Density::from_si(999.974950 * (1 - off * off * (t + 301.797) / (522528.9 * (t + 69.34881))));
}

Pressure vapour_pressure(Temperature temperature) {
    constexpr Pressure critical_pressure = 22064.0 * kilopascal;
    const double theta = 1 - temperature.in_kelvin() / critical_kelvin, root = std::sqrt(theta);
    const double cube = theta * theta * theta;
    const double sum = -7.85951783 * theta + 1.84408259 * theta * root - 11.7866497 * cube + 22.6807411 * cube * root -
                       15.9618719 * cube * theta + 1.80122502 * cube * cube * theta * root;
    return std::exp(critical_kelvin / temperature.in_kelvin() * sum) * critical_pressure;
}

Viscosity water_viscosity(Temperature temperature, Density density) {
    constexpr double critical_density = 322;  // kg/m3
    const double t = temperature.in_kelvin() / critical_kelvin, rho = density.si() / critical_density;
    const double dilute = 100 * std::sqrt(t) / (1.67752 + 2.20462 / t + 0.6366564 / (t * t) - 0.241605 / (t * t * t));
    double sum = 0;
    for (const Coefficient& h : by_density) sum += h.value * std::pow(1 / t - 1, h.i) * std::pow(rho - 1, h.j);
    return Viscosity::from_si(1e-6 * dilute * std::exp(rho * sum));
}

Viscosity water_viscosity(Temperature temperature) {
    return water_viscosity(temperature, water_density(temperature));
}

SurfaceTension surface_tension(Temperature temperature) {
    const double tau = 1 - temperature.in_kelvin() / critical_kelvin;
    return SurfaceTension::from_si(0.2358 * std::pow(tau, 1.256) * (1 - 0.625 * tau));
}

}  // namespace baitwright
