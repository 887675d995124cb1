#pragma once

#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

using HeatOfMass = Quantity<Dimension<0, 2, -2>>;  ///< J/kg
using MassFlux = Quantity<Dimension<1, -2, -1>>;   ///< kg/(m2 s)

/// What it takes to turn water into vapour: 2500.9 - 2.3685 t kJ/kg, t in degC.
/// **Source**: a line through IAPWS-95 values (python3-iapws). **Valid for**: 0 to 40 degC, within 0.1 kJ/kg. **Test**:
/// rows LATENT_HEAT.
HeatOfMass latent_heat(Temperature temperature);

/// Water lost by an open water face: (0.089 + 0.0782 v)(pw - pa)/hfg, with v in m/s and pressures in Pa; none where the
/// air holds more vapour than that. Over a small tub without wind it can be less by more than two (natural convection,
/// Shah 2014).
/// **Source**: Carrier 1918, in the form of the ASHRAE Handbook (as quoted by Smith et al. 1998). **Valid for**: 0 to
/// 40 degC, wind up to 10 m/s. **Test**: rows EVAPORATION.
MassFlux carrier_evaporation(Temperature water, Temperature air, Ratio relative_humidity, Speed wind);

/// Natural convection over a still water face takes this share of Carrier's rate. **Source**: the middle of what Shah
/// 2014 gives (constants from memory), 0.38 to 0.53. **Valid for**: a face as warm as the air, 5 to 30 degC, humidity
/// 30 to 90 %, within a fifth. **Test**: `tests/physics/evaporation_test.cpp`, against Shah's equation.
inline constexpr double still_air_share = 0.44;

}  // namespace baitwright
