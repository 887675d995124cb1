#pragma once

#include "quantities/quantity.h"
#include "quantities/temperature.h"

/// Water soaking into a particle, as diffusion into a sphere whose surface is at capacity from the start.
namespace baitwright {

/// Share of the final uptake reached: F(Fo) = 1 - (6/pi^2) sum_n n^-2 exp(-n^2 pi^2 Fo), with Fo = D t / a^2
/// (D diffusivity, t time, a radius). Below Fo = 0.01 the short-time form 6 sqrt(Fo/pi) - 3 Fo, whose error
/// there is under exp(-1/Fo) < 1e-43.
/// **Source**: Crank, The Mathematics of Diffusion, 2nd ed. 1975, eq. 6.20 and 6.22 (from memory).
/// **Valid for**: Fo >= 0; 0 below. **Test**: rows CRANK_SPHERE, to the digits printed.
Ratio sphere_uptake(Ratio fourier_number);

/// The Fourier number at which `sphere_uptake` reaches the share; 0 for share <= 0; throws InputError for share >= 1.
Ratio fourier_number_of_uptake(Ratio share);

/// How much faster a diffusion runs at T than at 15 degC: exp(-Ea/R (1/T - 1/288.15 K)).
/// **Source**: Arrhenius law; R from CODATA 2018 (8.314462618 J/(mol K)). **Valid for**: liquid water, 0-40 degC.
/// **Test**: row ARRHENIUS.
Ratio arrhenius_factor(MolarEnergy activation_energy, Temperature temperature);

}  // namespace baitwright
