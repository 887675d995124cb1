#pragma once

#include "quantities/quantity.h"
#include "quantities/temperature.h"

/// Fresh water at the pressure of the air.
namespace baitwright {

/// rho = a5 [1 - (t + a1)^2 (t + a2) / (a3 (t + a4))], t in degC, a1 -3.983035, a2 301.797, a3 522528.9, a4 69.34881,
/// a5 999.974950 kg/m3; free of air, at 101.325 kPa.
/// **Source**: Tanaka et al. 2001, Metrologia 38, 301 (coefficients as quoted by a tutorial of the metrology trade).
/// **Valid for**: 0 to 40 degC. **Test**: rows WATER_DENSITY.
Density water_density(Temperature temperature);

/// The pressure of water's vapour over water: with theta = 1 - T/647.096 K,
/// ln(p/22.064 MPa) = (647.096 K/T) (-7.85951783 theta + 1.84408259 theta^1.5 - 11.7866497 theta^3 + 22.6807411
/// theta^3.5
/// - 15.9618719 theta^4 + 1.80122502 theta^7.5).
/// **Source**: Wagner & Pruss 1993, IAPWS SR1-86 (from memory). **Valid for**: 0 to 373 degC, within 0.03 %.
/// **Test**: rows VAPOUR_PRESSURE.
Pressure vapour_pressure(Temperature temperature);

/// Dynamic viscosity: mu = mu0(T) mu1(T, rho), without the critical enhancement, which is under 1e-6 here.
/// **Source**: IAPWS R12-08 (coefficients from memory). **Valid for**: 0 to 40 degC at the pressure of the air, within
/// 0.3 %. **Test**: rows WATER_VISCOSITY.
Viscosity water_viscosity(Temperature temperature);
/// The same at a density of the caller's.
Viscosity water_viscosity(Temperature temperature, Density density);

/// sigma = 235.8 mN/m tau^1.256 (1 - 0.625 tau), tau = 1 - T/647.096 K.
/// **Source**: IAPWS R1-76(2014) (from memory). **Valid for**: 0 to 100 degC. **Test**: rows SURFACE_TENSION.
SurfaceTension surface_tension(Temperature temperature);

/// The air's usual pressure at sea level, 101.325 kPa. **Source**: CGPM 1954, resolution 4 (from memory).
inline constexpr Pressure standard_air_pressure = Pressure::from_si(101325.0);

}  // namespace baitwright
