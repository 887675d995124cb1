#pragma once

#include "quantities/quantity.h"
#include "quantities/temperature.h"

/// How fast single grains and whole balls sink in still water.
namespace baitwright {

/// Standard gravity. **Source**: CGPM 1901, resolution 2 (from memory).
inline constexpr double standard_gravity = 9.80665;  // m/s2

/// The water that things sink in.
struct StillWater {
    Density density;
    Viscosity viscosity;
    explicit StillWater(Temperature temperature);
    StillWater(Density its_density, Viscosity its_viscosity) : density(its_density), viscosity(its_viscosity) {}
};

/// Drag coefficient of a sphere or a rounder body of that sphericity (surface of the sphere of its volume over its
/// own): Cd = 24/Re (1 + A Re^B) + C/(1 + D/Re), on the sphere of equal volume; for spheres A 0.1806, B 0.6459, C
/// 0.4251, D 6880.95, else by the sphericity.
/// **Source**: Haider & Levenspiel 1989, Powder Technol. 58, 63 (from memory; the values are those of python3-fluids).
/// **Valid for**: Re up to 2.6e5, beyond which it is held; sphericity 0.67 to 1. **Test**: rows DRAG_HL, DRAG_TABLE.
Ratio haider_levenspiel_drag(Ratio reynolds, Ratio sphericity = 1.0);

/// The speed at which a body of that diameter (of equal volume) and density sinks for good, by Haider & Levenspiel;
/// below zero where it is lighter than the water and rises. **Test**: rows TERMINAL_V; PELLET_SETTLING with the
/// shipped pellets.
Speed terminal_speed(Length diameter, Density density, const StillWater& water, Ratio sphericity = 1.0);

/// The settling of natural grains: w = R g d^2 / (C1 nu + sqrt(0.75 C2 R g d^3)), R the excess density over the
/// water's, nu the kinematic viscosity, C1 18, C2 1. Below zero for what rises.
/// **Source**: Ferguson & Church 2004, J. Sediment. Res. 74, 933 (equation read). **Valid for**: clay to pebbles.
/// **Test**: rows FERGUSON_CHURCH.
Speed ferguson_church_speed(Length diameter, Ratio excess_density, const StillWater& water);

}  // namespace baitwright
