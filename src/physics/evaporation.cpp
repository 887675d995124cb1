#include "physics/evaporation.h"

#include <algorithm>
#include <cmath>

namespace baitwright {

namespace {

constexpr double vapour_over_air = 0.621945;  // molar masses

/// The temperature at which a function that rises with it is zero, by halving the gap.
template <class Function>
Temperature rising_zero(Temperature low, Temperature high, Function&& function) {
    double cold = low.in_celsius(), warm = high.in_celsius();
    constexpr int halvings = 45;
    for (int i = 0; i < halvings; ++i) {
        const double middle = 0.5 * (cold + warm);
        (function(Temperature::from_celsius(middle)) < 0 ? cold : warm) = middle;
    }
    return Temperature::from_celsius(0.5 * (cold + warm));
}

/// W/(m2 Pa) by which latent heat leaves.
double vapour_transfer(Speed wind) {
    return 0.089 + 0.0782 * wind.si();
}

/// Pa/K: how much vapour pressure a degree of the air makes up for.
double psychrometric_number(Pressure at_face, Pressure in_air, Temperature face) {
    const double p = standard_air_pressure.si(), pw = at_face.si(), pa = in_air.si();
    const double humid_heat = 1006 + 1860 * humidity_ratio(in_air, standard_air_pressure);
    return humid_heat * (p - pw) * (p - pa) / (vapour_over_air * p * latent_heat(face).si());
}

}  // namespace

HeatOfMass latent_heat(Temperature temperature) {
    const double t = temperature.in_celsius();
    return HeatOfMass::from_si(1e3 * (2500.90 - t * (2.36612 + 1.517e-4 * t)));
}

Ratio humidity_ratio(Pressure vapour, Pressure air) {
    return vapour_over_air * (vapour / (air - vapour));
}

Ratio humidity_ratio_at_wet_bulb(Temperature air, Temperature wet_bulb, Pressure pressure) {
    const double t = air.in_celsius(), wet = wet_bulb.in_celsius();
    const double saturated = humidity_ratio(vapour_pressure(wet_bulb), pressure);
    return ((2501 - 2.326 * wet) * saturated - 1.006 * (t - wet)) / (2501 + 1.86 * t - 4.186 * wet);
}

Temperature wet_bulb(Temperature air, Ratio relative_humidity, Pressure pressure) {
    const double own = humidity_ratio(relative_humidity * vapour_pressure(air), pressure);
    return rising_zero(air + -40.0 * kelvin, air,
                       [&](Temperature wet) { return humidity_ratio_at_wet_bulb(air, wet, pressure) - own; });
}

MassFlux carrier_evaporation(Temperature water, Temperature air, Ratio relative_humidity, Speed wind) {
    const double gap = vapour_pressure(water).si() - relative_humidity * vapour_pressure(air).si();
    return MassFlux::from_si(std::max(0.0, vapour_transfer(wind) * gap / latent_heat(water).si()));
}

Temperature wet_face_temperature(const Weather& weather) {
    const Pressure in_air = weather.humidity * vapour_pressure(weather.air);
    const double k = weather.sheltered_to * vapour_transfer(weather.wind);
    return rising_zero(weather.air + -40.0 * kelvin, weather.air + 50.0 * kelvin, [&](Temperature face) {
        const Pressure at_face = vapour_pressure(face);
        const double from_air = psychrometric_number(at_face, in_air, face) * (weather.air - face).in(kelvin);
        return k * ((at_face - in_air).si() - from_air) - weather.sun.si();
    });
}

MassFlux wet_face_loss(const Weather& weather) {
    const Temperature face = wet_face_temperature(weather);
    return weather.sheltered_to * carrier_evaporation(face, weather.air, weather.humidity, weather.wind);
}

Ratio DryingCourse::left_after(Time time) const {
    const Ratio constant = first_ - rate_ * time;
    if (constant >= critical_) return constant;
    const Time falling = first_ > critical_ ? time - (first_ - critical_) / rate_ : time;
    return std::min<double>(first_, critical_) * std::exp(-(rate_ * falling) / critical_);
}

Time DryingCourse::time_to(Ratio left) const {
    if (left >= first_) return {};
    if (left >= critical_) return (first_ - left) / rate_;
    const Time constant = std::max<double>(0.0, first_ - critical_) / rate_;
    return constant + critical_ * std::log(std::min<double>(first_, critical_) / left) / rate_;
}

PerTime DryingCourse::first_rate() const {
    return std::min<double>(1.0, first_ / critical_) * rate_;
}

}  // namespace baitwright
