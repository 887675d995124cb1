#pragma once

#include <string>
#include <string_view>
#include <vector>

/// The one table of unit symbols: it drives what the readers accept and what their messages offer.
namespace baitwright {

/// What a unit measures.
enum class Measure {
    mass,
    length,
    volume,
    time,
    density,
    speed,
    diffusivity,
    molar_energy,
    pressure,
    ratio,
    temperature
};

/// A row of the table.
struct UnitRow {
    std::string_view symbol;  ///< as messages write it
    Measure measure;
    double in_si;            ///< a temperature's scale only: its zero is `Temperature`'s business
    bool offered;            ///< messages name it among the units that fit
    std::string_view names;  ///< all that is read as it, in lower case, parted by '|'
};

/// The row that is read from `name`, whatever its case; null where there is none.
const UnitRow* unit_called(std::string_view name);

/// The row of that measure whose name is nearest to a mistyped word; null where none is near.
const UnitRow* unit_nearest(std::string_view word, Measure measure);

/// "a mass".
std::string_view measure_name(Measure measure);

/// "400 g": how one is written.
std::string_view measure_example(Measure measure);

/// "g", "kg", "oz", "lb": the units of that measure that messages offer.
std::vector<std::string_view> units_offered(Measure measure);

/// "a mass is written in g, kg, oz or lb".
std::string units_that_fit(Measure measure);

/// Masses, lengths, volumes and times may be written in parts: "1 lb 4 oz".
bool comes_in_parts(Measure measure);

}  // namespace baitwright
