#include "quantities/all_digits.h"

#include <array>
#include <cmath>
#include <limits>

#include "quantities/number_text.h"
#include "quantities/temperature.h"
#include "quantities/unit_table.h"

namespace baitwright {

namespace {

bool all_digits = false;

/// In the order of `Measure`: the units whose size is one.
constexpr std::array<std::string_view, 11> si_symbols{"kg",   "m",     "m3", "s",   "kg/m3", "m/s",
                                                      "m2/s", "J/mol", "Pa", "g/g", "K"};

/// The shortest text of a number near this one for which `fits` holds.
template <class Fits>
std::optional<std::string> first_that_fits(double near, Fits&& fits) {
    if (!std::isfinite(near)) return std::nullopt;
    const std::string shortest = number_text_within(near, 0.99e-12 * std::abs(near));
    if (fits(parse_number(shortest))) return shortest;
    if (fits(near)) return number_text(near);
    double above = near, below = near;
    for (int step = 0; step < 4; ++step) {
        above = std::nextafter(above, std::numeric_limits<double>::infinity());
        below = std::nextafter(below, -std::numeric_limits<double>::infinity());
        for (const double beside : {above, below})
            if (fits(beside)) return number_text(beside);
    }
    return std::nullopt;
}

}  // namespace

bool all_digits_wanted() {
    return all_digits;
}

AllDigitsHere::AllDigitsHere() : before_(all_digits) {
    all_digits = true;
}
AllDigitsHere::~AllDigitsHere() {
    all_digits = before_;
}

std::optional<std::string> number_to_the_bit(double si, double unit_in_si) {
    return first_that_fits(si / unit_in_si, [&](double number) { return number * unit_in_si == si; });
}

std::string text_to_the_bit(double si, std::string_view unit_symbol) {
    const UnitRow& unit = *unit_called(unit_symbol);
    if (const auto number = number_to_the_bit(si, unit.in_si)) return *number + " " + std::string(unit_symbol);
    return number_text(si) + " " + std::string(si_symbols.at(static_cast<std::size_t>(unit.measure)));
}

std::optional<std::string> celsius_to_the_bit(double kelvins) {
    return first_that_fits(Temperature::from_kelvin(kelvins).in_celsius(),
                           [&](double degrees) { return Temperature::from_celsius(degrees).in_kelvin() == kelvins; });
}

std::string temperature_to_the_bit(double kelvins) {
    if (const auto degrees = celsius_to_the_bit(kelvins)) return *degrees + " degC";
    return number_text(kelvins) + " K";
}

}  // namespace baitwright
