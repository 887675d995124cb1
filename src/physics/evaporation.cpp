#include "physics/evaporation.h"

#include <algorithm>

#include "physics/water.h"

namespace baitwright {

HeatOfMass latent_heat(Temperature temperature) {
    return HeatOfMass::from_si(1e3 * (2500.9 - 2.3685 * temperature.in_celsius()));
}

MassFlux carrier_evaporation(Temperature water, Temperature air, Ratio relative_humidity, Speed wind) {
    const double gap = vapour_pressure(water).si() - relative_humidity * vapour_pressure(air).si();
    return MassFlux::from_si(std::max(0.0, (0.089 + 0.0782 * wind.si()) * gap / latent_heat(water).si()));
}

}  // namespace baitwright
