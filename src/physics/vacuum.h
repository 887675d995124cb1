#pragma once

#include "quantities/quantity.h"

/// Drawing the air out of porous pellets under water, and letting it back: the water follows.
namespace baitwright {

/// The absolute pressure after so many strokes: p0 (V/(V + Vs))^n by Boyle's law, but never below the water's vapour
/// pressure, at which the water boils and fills whatever the pump makes room for. V is the vessel's free volume (air
/// above water and pellets), Vs what one stroke draws.
/// **Source**: Boyle's law, isothermal strokes without leaks. **Valid for**: strokes >= 0, volumes above 0.
/// **Test**: `tests/physics/vacuum_test.cpp`.
Pressure pressure_after(double strokes, Volume stroke, Volume free_volume, Pressure air, Pressure vapour);

/// The strokes at which the floor of the vapour is reached; pumping on draws vapour only.
double strokes_to_boil(Volume stroke, Volume free_volume, Pressure air, Pressure vapour);

/// The share of the open pores that water fills when the air is let back in: 1 - (p - pw)/(p0 - pw), the vapour in the
/// pores having condensed. Air left in them, swelling and blind pores are left out: an upper bound.
/// **Source**: Fito 1994, J. Food Eng. 22, hydrodynamic mechanism (from memory), with Dalton's law for the vapour.
/// **Valid for**: pw <= p <= p0. **Test**: rows VACUUM_FITO (pw = 0), VACUUM_VAPOUR.
Ratio pore_fill(Pressure reached, Pressure air, Pressure vapour);

}  // namespace baitwright
