#include "report/imperial_text.h"

#include <fmt/format.h>

#include <cmath>

#include "quantities/units.h"
#include "report/significant.h"

namespace baitwright {

namespace {

constexpr long ounces_a_pound = 16, fluid_ounces_a_pint = 20, inches_a_foot = 12;
constexpr Volume least_in_pints = 0.5 * imperial_pint;

/// Two digits, without the noughts of "5.0" and "0.50".
std::string plain_two_digits(double value) {
    std::string text = significant(value, 2);
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

/// "2 lb 3 oz", "2 lb", "3 oz" of whole small units.
std::string in_parts(long small, long each, const char* large_symbol, const char* small_symbol) {
    if (small < each) return fmt::format("{} {}", small, small_symbol);
    return small % each ? fmt::format("{} {} {} {}", small / each, large_symbol, small % each, small_symbol)
                        : fmt::format("{} {}", small / each, large_symbol);
}

/// "4 to 9 in" of "4 in" and "9 in"; where the units differ, or one end is in two, both ends are told whole.
std::string from_to(const std::string& low, const std::string& high) {
    if (low == high) return "about " + high;
    const auto unit_at = [](const std::string& text) { return text.find(' '); };
    const std::string unit = low.substr(unit_at(low));
    const bool same_unit = unit == high.substr(unit_at(high)) && unit.find_first_of("0123456789") == std::string::npos;
    return (same_unit ? low.substr(0, unit_at(low)) : low) + " to " + high;
}

std::string measured_fluid_ounces(double ounces) {
    if (ounces > 0 && ounces < 0.095) return significant(ounces, 2) + " fl oz";
    const double step = ounces < 4.95 ? 0.1 : 0.5;
    return fmt::format("{:g} fl oz", step * std::round(ounces / step));
}

}  // namespace

std::string ounces_text(Mass mass) {
    const double ounces = mass.in(ounce);
    if (ounces > 0 && ounces < 0.095) return significant(ounces, 2) + " oz";
    if (ounces < 15.95) return fmt::format("{:.1f} oz", ounces);
    return in_parts(std::lround(ounces), ounces_a_pound, "lb", "oz");
}

std::string ounces_text(Mass low, Mass high) {
    return from_to(ounces_text(low), ounces_text(high));
}

std::string measured_pints_text(Volume volume) {
    const double ounces = volume.in(imperial_fluid_ounce);
    if (ounces < 19.75) return measured_fluid_ounces(ounces);
    if (ounces < 199.5) return in_parts(std::lround(ounces), fluid_ounces_a_pint, "pt", "fl oz");
    return significant(volume.in(imperial_pint), 3) + " pt";
}

std::string measured_pints_text(Volume low, Volume high) {
    return from_to(measured_pints_text(low), measured_pints_text(high));
}

std::string pints_text(Volume volume) {
    return volume < least_in_pints ? plain_two_digits(volume.in(imperial_fluid_ounce)) + " fl oz"
                                   : plain_two_digits(volume.in(imperial_pint)) + " pt";
}

std::string pints_text(Volume low, Volume high) {
    if (high < least_in_pints) return from_to(pints_text(low), pints_text(high));
    return from_to(plain_two_digits(low.in(imperial_pint)) + " pt", plain_two_digits(high.in(imperial_pint)) + " pt");
}

std::string feet_text(Length length) {
    const double inches = std::abs(length.in(inch));
    if (inches > 0 && inches < 0.95) return significant(inches, 1) + " in";
    return in_parts(std::lround(inches), inches_a_foot, "ft", "in");
}

std::string estimated_feet_text(Length length) {
    const double feet = std::abs(length.in(foot));
    return feet < 9.95 ? feet_text(length) : significant(feet, 2) + " ft";
}

std::string estimated_feet_text(Length low, Length high) {
    return from_to(estimated_feet_text(low), estimated_feet_text(high));
}

std::string fahrenheit_text(Temperature temperature) {
    return fmt::format("{} degF", std::lround(32 + 1.8 * temperature.in_celsius()));
}

}  // namespace baitwright
