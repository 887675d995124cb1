#include "physics/solutions.h"

#include <array>
#include <cmath>
#include <string>

#include "physics/piecewise_linear.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double pure_water = 998.2;  // kg/m3 at 20 degC
constexpr std::array<std::string_view, 3> solute_names{"salt", "glycerol", "sucrose"};

// Mass fraction against density in kg/m3 at 20 degC.
constexpr std::array<Knot, 12> salt_density{{{0, pure_water},
                                             {0.01, 1005.3},
                                             {0.02, 1012.2},
                                             {0.04, 1026.8},
                                             {0.06, 1041.3},
                                             {0.08, 1055.9},
                                             {0.10, 1070.7},
                                             {0.12, 1085.7},
                                             {0.16, 1116.2},
                                             {0.20, 1147.8},
                                             {0.26, 1197.2},
                                             {0.264, 1200.5}}};
constexpr std::array<Knot, 11> glycerol_density{{{0, pure_water},
                                                 {0.1, 1.02395 * pure_water},
                                                 {0.2, 1.0488 * pure_water},
                                                 {0.3, 1.0747 * pure_water},
                                                 {0.4, 1.10135 * pure_water},
                                                 {0.5, 1.12845 * pure_water},
                                                 {0.6, 1.15605 * pure_water},
                                                 {0.7, 1.18355 * pure_water},
                                                 {0.8, 1.2109 * pure_water},
                                                 {0.9, 1.23755 * pure_water},
                                                 {1.0, 1.26362 * pure_water}}};
constexpr std::array<Knot, 9> sucrose_density{{{0, pure_water},
                                               {0.1, 1038.1},
                                               {0.2, 1081.0},
                                               {0.3, 1127.0},
                                               {0.4, 1176.4},
                                               {0.5, 1229.6},
                                               {0.6, 1286.4},
                                               {0.66, 1322.4},
                                               {0.72, 1359.9}}};

// Molality of sodium chloride against water activity at 25 degC.
constexpr std::array<Knot, 9> salt_activity{{{0, 1},
                                             {0.5, 0.98355},
                                             {1, 0.96686},
                                             {2, 0.9316},
                                             {3, 0.8932},
                                             {4, 0.8515},
                                             {5, 0.8068},
                                             {6, 0.7598},
                                             {6.15, 0.7528}}};

constexpr double water_molar = 18.015, salt_molar = 58.443, glycerol_molar = 92.09, sucrose_molar = 342.3;  // g/mol

std::span<const Knot> densities(Solute solute) {
    if (solute == Solute::salt) return salt_density;
    if (solute == Solute::glycerol) return glycerol_density;
    return sucrose_density;
}

void check_fraction(Solute solute, double fraction) {
    if (fraction >= 0 && fraction <= highest_fraction(solute)) return;
    throw InputError("out-of-range", "that is more " + std::string(name_of(solute)) + " than water dissolves",
                     "use more water or less " + std::string(name_of(solute)));
}

double norrish(double fraction, double molar, double constant) {
    const double solute = fraction / molar, water = (1 - fraction) / water_molar;
    const double share = solute / (solute + water);
    return (1 - share) * std::exp(-constant * share * share);
}

}  // namespace

std::optional<Solute> find_solute(std::string_view name) {
    for (std::size_t i = 0; i < solute_names.size(); ++i)
        if (name == solute_names[i]) return static_cast<Solute>(i);
    return std::nullopt;
}

std::string_view name_of(Solute solute) {
    return solute_names[static_cast<std::size_t>(solute)];
}

Ratio highest_fraction(Solute solute) {
    return densities(solute).back().x;
}

Ratio soluble_fraction(Solute solute, Temperature water) {
    if (solute != Solute::sucrose) return highest_fraction(solute);
    const double t = water.in_celsius();
    return 0.01 * (64.447 + t * (0.08222 + t * (1.6169e-3 - t * (1.558e-6 + 4.63e-8 * t))));
}

Density solution_density(Solute solute, Ratio fraction) {
    check_fraction(solute, fraction);
    const std::span<const Knot> rows = densities(solute);
    std::size_t above = 1;
    while (above + 1 < rows.size() && rows[above].x < fraction) ++above;
    const Knot& low = rows[above - 1];
    const Knot& high = rows[above];
    const double along = (fraction - low.x) / (high.x - low.x);
    const double specific_volume = (1 - along) / low.y + along / high.y;
    return 1 / specific_volume * (kilogram / (metre * metre * metre));
}

Ratio water_activity(Solute solute, Ratio fraction) {
    check_fraction(solute, fraction);
    if (solute == Solute::glycerol) return norrish(fraction, glycerol_molar, 1.16);
    if (solute == Solute::sucrose) return norrish(fraction, sucrose_molar, 6.47);
    const double molality = fraction / (1 - fraction) * 1000 / salt_molar;
    return piecewise_linear(salt_activity, molality);
}

}  // namespace baitwright
