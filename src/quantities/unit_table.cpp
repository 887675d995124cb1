#include "quantities/unit_table.h"

#include <fmt/format.h>

#include <array>
#include <unordered_map>
#include <vector>

#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// Standard gravity in m/s2, which makes a force of the pound. **Source**: CGPM 1901, resolution 2 (from memory).
constexpr double standard_gravity = 9.80665;
/// The international mile in m. **Source**: NIST Special Publication 811, appendix B (from memory).
constexpr double mile = 1609.344;
/// The standard atmosphere in Pa. **Source**: CGPM 1954, resolution 4 (from memory).
constexpr double atmosphere = 101325.0;
constexpr double bar = 1e5;
/// Pound-force on a square inch, by definition.
constexpr double pound_per_square_inch = pound.in_si * standard_gravity / (inch.in_si * inch.in_si);

constexpr bool offered = true;
constexpr bool unoffered = false;
using enum Measure;

constexpr std::array unit_rows{
    UnitRow{"g", mass, gram.in_si, offered, "g|gm|gms|gram|grams|gramme|grammes"},
    UnitRow{"kg", mass, kilogram.in_si, offered, "kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes"},
    UnitRow{"mg", mass, 1e-6, unoffered, "mg|milligram|milligrams"},
    UnitRow{"oz", mass, ounce.in_si, offered, "oz|ozs|ounce|ounces"},
    UnitRow{"lb", mass, pound.in_si, offered, "lb|lbs|pound|pounds"},
    UnitRow{"st", mass, stone.in_si, unoffered, "st|stone|stones"},

    UnitRow{"ml", volume, millilitre.in_si, offered, "ml|mls|cc|millilitre|millilitres|milliliter|milliliters"},
    UnitRow{"l", volume, litre.in_si, offered, "l|ltr|ltrs|litre|litres|liter|liters"},
    UnitRow{"cl", volume, 1e-5, unoffered, "cl|centilitre|centilitres|centiliter|centiliters"},
    UnitRow{"pt", volume, imperial_pint.in_si, offered, "pt|pts|pint|pints"},
    UnitRow{"floz", volume, imperial_fluid_ounce.in_si, offered, "floz|fl oz|fl ozs|fluid ounce|fluid ounces"},
    UnitRow{"gal", volume, imperial_gallon.in_si, unoffered, "gal|gals|gallon|gallons"},
    UnitRow{"USpt", volume, us_pint.in_si, unoffered, "uspt|us pt|us pts|us pint|us pints"},
    UnitRow{"USfloz", volume, us_pint.in_si / 16, unoffered, "usfloz|us floz|us fl oz"},
    UnitRow{"m3", volume, 1.0, unoffered, "m3|m\u00b3|cubic metre|cubic metres"},

    UnitRow{"mm", length, millimetre.in_si, offered, "mm|mms|millimetre|millimetres|millimeter|millimeters"},
    UnitRow{"cm", length, centimetre.in_si, offered, "cm|cms|centimetre|centimetres|centimeter|centimeters"},
    UnitRow{"m", length, metre.in_si, offered, "m|metre|metres|meter|meters"},
    UnitRow{"in", length, inch.in_si, offered, "in|ins|inch|inches|\"|\u2033|\u201d"},
    UnitRow{"ft", length, foot.in_si, offered, "ft|foot|feet|'|\u2032|\u2019"},

    UnitRow{"s", Measure::time, second.in_si, offered, "s|sec|secs|second|seconds"},
    UnitRow{"min", Measure::time, minute.in_si, offered, "min|mins|minute|minutes"},
    UnitRow{"h", Measure::time, hour.in_si, offered, "h|hr|hrs|hour|hours"},
    UnitRow{"d", Measure::time, day.in_si, offered, "d|day|days"},
    UnitRow{"week", Measure::time, 7 * day.in_si, unoffered, "week|weeks"},
    UnitRow{"month", Measure::time, month.in_si, unoffered, "month|months"},
    UnitRow{"year", Measure::time, year.in_si, unoffered, "year|years"},

    UnitRow{"g/l", density, gram_per_litre.in_si, offered, "g/l"},
    UnitRow{"g/ml", density, gram_per_millilitre.in_si, offered, "g/ml"},
    UnitRow{"g/cm3", density, gram_per_millilitre.in_si, unoffered, "g/cm3|g/cm\u00b3"},
    UnitRow{"kg/l", density, (kilogram / litre).in_si, offered, "kg/l"},
    UnitRow{"kg/m3", density, 1.0, offered, "kg/m3|kg/m\u00b3"},

    UnitRow{"mm/s", speed, 1e-3, offered, "mm/s"},
    UnitRow{"cm/s", speed, centimetre_per_second.in_si, offered, "cm/s"},
    UnitRow{"m/s", speed, metre_per_second.in_si, offered, "m/s"},
    UnitRow{"km/h", speed, 1000 / hour.in_si, offered, "km/h"},
    UnitRow{"mph", speed, mile / hour.in_si, offered, "mph"},

    UnitRow{"m2/s", diffusivity, square_metre_per_second.in_si, offered, "m2/s|m\u00b2/s"},
    UnitRow{"mm2/s", diffusivity, 1e-6, offered, "mm2/s|mm\u00b2/s"},

    UnitRow{"kJ/mol", molar_energy, kilojoule_per_mole.in_si, offered, "kj/mol"},
    UnitRow{"J/mol", molar_energy, joule_per_mole.in_si, offered, "j/mol"},

    UnitRow{"Pa", pressure, pascal.in_si, unoffered, "pa|pascal|pascals"},
    UnitRow{"kPa", pressure, kilopascal.in_si, offered, "kpa|kilopascal|kilopascals"},
    UnitRow{"mbar", pressure, bar / 1000, offered, "mbar|millibar|millibars"},
    UnitRow{"bar", pressure, bar, offered, "bar|bars"},
    UnitRow{"psi", pressure, pound_per_square_inch, offered, "psi"},
    UnitRow{"atm", pressure, atmosphere, unoffered, "atm|atmosphere|atmospheres"},

    UnitRow{"%", ratio, percent.in_si, offered, "%|percent|per cent"},
    UnitRow{"g/g", ratio, one.in_si, offered, "g/g"},
    UnitRow{"kg/kg", ratio, one.in_si, unoffered, "kg/kg"},

    UnitRow{"degC", temperature, kelvin.in_si, offered,
            "degc|deg c|degs c|degrees c|degrees celsius|\u00b0c|\u00b0 c|\u2103|c|celsius|centigrade"},
    UnitRow{"degF", temperature, kelvin.in_si / 1.8, offered,
            "degf|deg f|degs f|degrees f|degrees fahrenheit|\u00b0f|\u00b0 f|\u2109|f|fahrenheit"},
    UnitRow{"K", temperature, kelvin.in_si, offered, "k|kelvin"},
};

struct MeasureRow {
    std::string_view name;
    std::string_view example;
};

/// In the order of `Measure`.
constexpr std::array measure_rows{
    MeasureRow{"a mass", "400 g"},
    MeasureRow{"a length", "55 mm"},
    MeasureRow{"a volume", "250 ml"},
    MeasureRow{"a time", "20 min"},
    MeasureRow{"a density", "420 g/l"},
    MeasureRow{"a speed", "2 cm/s"},
    MeasureRow{"a diffusivity", "2e-10 m2/s"},
    MeasureRow{"an energy per mole", "35 kJ/mol"},
    MeasureRow{"a pressure", "101 kPa"},
    MeasureRow{"a ratio", "15 %"},
    MeasureRow{"a temperature", "12 degC"},
};

const MeasureRow& measure_row(Measure measure) {
    return measure_rows.at(static_cast<std::size_t>(measure));
}

/// The first of the names parted by '|', taken off their front.
std::string_view take_name(std::string_view& names) {
    const auto end = names.find('|');
    const auto name = names.substr(0, end);
    names.remove_prefix(end == std::string_view::npos ? names.size() : end + 1);
    return name;
}

/// Every name of every unit; of a name that two have, the first one's.
std::unordered_map<std::string_view, const UnitRow*> units_by_name() {
    std::unordered_map<std::string_view, const UnitRow*> units;
    for (const auto& row : unit_rows)
        for (auto names = row.names; !names.empty();) units.emplace(take_name(names), &row);
    return units;
}

}  // namespace

const UnitRow* unit_called(std::string_view name) {
    static const auto units = units_by_name();
    const auto found = units.find(folded_name(name));
    return found == units.end() ? nullptr : found->second;
}

const UnitRow* unit_nearest(std::string_view word, Measure measure) {
    std::vector<std::string> candidates;
    for (const auto& row : unit_rows) {
        if (row.measure != measure) continue;
        for (auto names = row.names; !names.empty();) candidates.emplace_back(take_name(names));
    }
    const auto nearest = nearest_name(word, candidates);
    return nearest ? unit_called(*nearest) : nullptr;
}

std::string_view measure_name(Measure measure) {
    return measure_row(measure).name;
}

std::string_view measure_example(Measure measure) {
    return measure_row(measure).example;
}

std::vector<std::string_view> units_offered(Measure measure) {
    std::vector<std::string_view> symbols;
    for (const auto& row : unit_rows) {
        if (row.measure == measure && row.offered) symbols.push_back(row.symbol);
    }
    return symbols;
}

std::string units_that_fit(Measure measure) {
    const std::vector<std::string_view> symbols = units_offered(measure);
    std::string list;
    for (std::size_t i = 0; i < symbols.size(); ++i) {
        if (i > 0) list += i + 1 == symbols.size() ? " or " : ", ";
        list += symbols[i];
    }
    return fmt::format("{} is written in {}", measure_name(measure), list);
}

bool comes_in_parts(Measure measure) {
    return measure == mass || measure == length || measure == volume || measure == Measure::time;
}

}  // namespace baitwright
