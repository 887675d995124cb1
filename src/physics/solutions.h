#pragma once

#include <optional>
#include <string_view>

#include "quantities/quantity.h"
#include "quantities/temperature.h"

namespace baitwright {

/// What can be dissolved in the water, as far as tables go.
enum class Solute { salt, glycerol, sucrose };

std::optional<Solute> find_solute(std::string_view name);
std::string_view name_of(Solute solute);

/// Mass of solute over mass of solution.
constexpr Ratio mass_fraction(Mass solute, Mass water) {
    return solute / (solute + water);
}

/// Density of the solution at 20 degC, linear between the table's rows in specific volume.
/// **Source**: sodium chloride, Poradnik fizykochemiczny 1974 (table read at fizyka.umk.pl); glycerol, Lange's Handbook
/// of Chemistry, 15th ed., table 5.13 (specific gravity 20/20 degC, every tenth); sucrose, CRC Handbook values as
/// quoted.
/// **Valid for**: mass fractions up to `highest_fraction`; throws InputError "out-of-range" beyond. Glycerol within
/// 2e-4 of its table, sucrose within 5e-4. **Test**: rows NACL_DENSITY (Rogers & Pitzer 1982 among them),
/// GLYCEROL_DENSITY, SUCROSE_DENSITY.
Density solution_density(Solute solute, Ratio fraction);

/// Water activity: the relative humidity over the solution, which says how well it keeps. Glycerol and sucrose by
/// Norrish, ln aw = ln x_w - K x_s^2 with mole fractions x and K 1.16 and 6.47; salt by table, linear in molality.
/// **Source**: Norrish 1966 (form read in Baeza et al. 2010, constants from memory); sodium chloride, Robinson &
/// Stokes, Electrolyte Solutions, at 25 degC (from memory). **Valid for**: as above, around 20-25 degC, within 0.01.
/// **Test**: rows WATER_ACTIVITY.
Ratio water_activity(Solute solute, Ratio fraction);

/// The highest mass fraction the tables cover: salt 0.264 (saturated), glycerol 1, sucrose 0.72 (more than dissolves).
Ratio highest_fraction(Solute solute);

/// The mass fraction that dissolves in water of that warmth, in percent for sucrose
///     64.447 + 0.08222 t + 1.6169e-3 t^2 - 1.558e-6 t^3 - 4.63e-8 t^4,  t in degC;
/// of salt always 26.4 % (26.3 at 0 degC, 26.7 at 40), glycerol mixes at any.
/// **Source**: Vavrinecz 1962, the table of ICUMSA (from memory). **Valid for**: 0 to 60 degC. **Test**: rows
/// SUCROSE_SOLUBILITY (read).
Ratio soluble_fraction(Solute solute, Temperature water);

}  // namespace baitwright
