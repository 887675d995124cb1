#include "questions/shown_units_of.h"

#include <algorithm>
#include <array>
#include <string_view>

#include "quantities/quantity_text.h"
#include "quantities/unit_table.h"

namespace baitwright {

namespace {

/// What stands between a quantity and what else is said with it.
constexpr std::array<std::string_view, 6> beside_quantities{"=", "x", "\u00d7", " in ", " of ", " per "};

bool is_one_of(std::string_view symbol, std::initializer_list<std::string_view> symbols) {
    return std::find(symbols.begin(), symbols.end(), symbol) != symbols.end();
}

void heed_unit(std::string_view symbol, ShownUnits& units) {
    if (is_one_of(symbol, {"ft", "in"})) units.feet = true;
    if (symbol == "degF") units.fahrenheit = true;
    if (is_one_of(symbol, {"pt", "floz", "gal"})) units.pints = true;
    if (is_one_of(symbol, {"oz", "lb", "st"})) units.ounces = true;
}

void heed_text(std::string_view text, ShownUnits& units) {
    constexpr std::size_t longest = 200;  // what is longer is no quantity
    if (text.size() > longest) return;
    if (const UnitRow* unit = unit_used(text)) return heed_unit(unit->symbol, units);
    for (const std::string_view between : beside_quantities) {
        const auto at = text.find(between);
        if (at == std::string_view::npos) continue;
        heed_text(text.substr(0, at), units);
        heed_text(text.substr(at + between.size()), units);
        return;
    }
    if (const auto blank = text.find(' '); blank != std::string_view::npos && is_bare_number(text.substr(0, blank)))
        heed_text(text.substr(blank + 1), units);  // "1 2lb": a fish of two pounds
}

}  // namespace

ShownUnits shown_units_of(const std::vector<std::string>& typed, const std::optional<std::string>& usual) {
    ShownUnits units;
    if (usual) units.system = parse_unit_system(*usual);
    for (const std::string& text : typed) heed_text(text, units);
    return units;
}

ShownUnits shown_units_of(const Arguments& arguments) {
    std::vector<std::string> typed = arguments.typed_values();
    typed.insert(typed.end(), arguments.words().begin(), arguments.words().end());
    return shown_units_of(typed, arguments.usual("units"));
}

}  // namespace baitwright
