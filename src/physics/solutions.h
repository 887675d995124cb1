#pragma once

#include <optional>
#include <string_view>

#include "quantities/quantity.h"

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
/// of Chemistry, 15th ed., table 5.13 (specific gravity 20/20 degC), pure glycerol from memory; sucrose, CRC Handbook
/// values as quoted (60 % from memory). **Valid for**: mass fractions up to `highest_fraction`; throws InputError
/// "out-of-range" beyond. **Test**: rows NACL_DENSITY (Rogers & Pitzer 1982 among them), GLYCEROL_DENSITY,
/// SUCROSE_DENSITY.
Density solution_density(Solute solute, Ratio fraction);

/// Water activity: the relative humidity over the solution, which says how well it keeps. Glycerol and sucrose by
/// Norrish, ln aw = ln x_w - K x_s^2 with mole fractions x and K 1.16 and 6.47; salt by table, linear in molality.
/// **Source**: Norrish 1966 (form read in Baeza et al. 2010, constants from memory); sodium chloride, Robinson &
/// Stokes, Electrolyte Solutions, at 25 degC (from memory). **Valid for**: as above, around 20-25 degC, within 0.01.
/// **Test**: rows WATER_ACTIVITY.
Ratio water_activity(Solute solute, Ratio fraction);

/// The highest mass fraction the tables cover: salt 0.264 (saturated), glycerol 1, sucrose 0.667 (saturated).
Ratio highest_fraction(Solute solute);

}  // namespace baitwright
