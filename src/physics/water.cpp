#include "physics/water.h"

#include <cmath>

#include "quantities/units.h"

namespace baitwright {

Density water_density(Temperature temperature) {
    const double t = temperature.in_celsius();
    const double off = t - 3.983035;
    return Density::from_si(999.974950 * (1 - off * off * (t + 301.797) / (522528.9 * (t + 69.34881))));
}

Pressure vapour_pressure(Temperature temperature) {
    constexpr double critical_kelvin = 647.096;
    constexpr Pressure critical_pressure = 22064.0 * kilopascal;
    const double theta = 1 - temperature.in_kelvin() / critical_kelvin, root = std::sqrt(theta);
    const double cube = theta * theta * theta;
    const double sum = -7.85951783 * theta + 1.84408259 * theta * root - 11.7866497 * cube +
                       22.6807411 * cube * root - 15.9618719 * cube * theta +
                       1.80122502 * cube * cube * theta * root;
    return std::exp(critical_kelvin / temperature.in_kelvin() * sum) * critical_pressure;
}

}  // namespace baitwright
