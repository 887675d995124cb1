#pragma once

#include "quantities/quantity.h"

/// Drawing the air out of porous pellets under water, and letting it back: the water follows.
namespace baitwright {

/// The absolute pressure after so many strokes: p = pw + (p0 - pw) (V/(V + Vs))^n. Each stroke thins the air by the
/// same factor (Boyle), while water evaporates on and keeps its vapour at pw: the pressure tends to pw and never gets
/// there. V is all the air that the pump works on, above the water and in the pores, Vs what one stroke draws; p0 the
/// air outside.
/// **Source**: Boyle's law with Dalton's for the vapour, isothermal strokes without leaks; the air over the water is
/// taken as damp from the start. **Valid for**: strokes >= 0, volumes above 0, pw < p0. **Test**:
/// `tests/physics/vacuum_test.cpp`.
Pressure pressure_after(double strokes, Volume stroke, Volume air_volume, Pressure outside, Pressure vapour);

/// The share of the open pores that water fills when the air is let back in: 1 - (p - pw)/(p0 - pw), the vapour in the
/// pores having condensed; after n strokes 1 - (V/(V + Vs))^n. Air that sticks in them, swelling and blind pores are
/// left out: an upper bound.
/// **Source**: Fito 1994, J. Food Eng. 22, hydrodynamic mechanism (from memory), with Dalton's law for the vapour.
/// **Valid for**: pw <= p <= p0. **Test**: rows VACUUM_FITO (pw = 0), VACUUM_VAPOUR.
Ratio pore_fill(Pressure reached, Pressure outside, Pressure vapour);

}  // namespace baitwright
