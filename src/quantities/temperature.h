#pragma once

#include <compare>

#include "quantities/units.h"

namespace baitwright {

/// A point on the temperature scale. Two points differ by a `TemperatureDifference`; they never add.
class Temperature {
public:
    constexpr Temperature() = default;
    static constexpr Temperature from_kelvin(double value) {
        Temperature t;
        t.kelvin_ = value;
        return t;
    }
    static constexpr Temperature from_celsius(double value) { return from_kelvin(value + 273.15); }
    static constexpr Temperature from_fahrenheit(double value) { return from_celsius((value - 32.0) / 1.8); }
    [[nodiscard]] constexpr double in_kelvin() const { return kelvin_; }
    [[nodiscard]] constexpr double in_celsius() const { return kelvin_ - 273.15; }
    // NOLINTNEXTLINE(modernize-use-nullptr): clang-tidy 14 takes the zero of a defaulted <=> for a pointer
    constexpr auto operator<=>(const Temperature&) const = default;

private:
    double kelvin_ = 273.15;
};

constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
    return (a.in_kelvin() - b.in_kelvin()) * kelvin;
}
constexpr Temperature operator+(Temperature a, TemperatureDifference d) {
    return Temperature::from_kelvin(a.in_kelvin() + d.in(kelvin));
}

}  // namespace baitwright
