#include "report/display.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "bait/kitchen_rounding.h"
#include "quantities/clock.h"
#include "quantities/units.h"
#include "report/imperial_text.h"
#include "report/one_unit.h"
#include "report/shown_units.h"

namespace baitwright {

namespace {

bool is_imperial() {
    return units_shown().system == UnitSystem::imperial;
}

Volume water_volume(Mass water) {
    return water / (1.0 * gram_per_millilitre);  // a gram of water is a millilitre within 0.2 %
}

/// An estimate, two digits: "640 ml", "2.6 l".
std::string litres_text(Volume volume) {
    const double litres = volume.in(litre);
    if (litres >= 0.995) return significant(litres, 2) + " l";
    return significant(litres * 1000, 2) + " ml";
}

Mass at_least_a_gram(Mass mass) {
    return mass > Mass{} ? std::max(mass, 1.0 * gram) : Mass{};
}

/// So little that a scale in whole tenths of an ounce cannot weigh it.
constexpr Mass pinch = 1.0 * ounce;
constexpr Volume drop_of_liquid = 1.0 * imperial_fluid_ounce;

}  // namespace

Mass scale_mass(Mass mass) {
    return units_shown().ounces ? at_least_a_gram(mass) : kitchen_mass(mass);
}

Mass jug_water(Mass water) {
    return is_imperial() ? at_least_a_gram(water) : kitchen_water(water);
}

std::string shown_grams(Mass mass) {
    const double grams = mass.in(gram);
    if (grams < 10) return fmt::format("{:.2g} g", grams);
    return grams < 9999.5 ? fmt::format("{:.0f} g", grams) : significant(grams / 1000, 3) + " kg";
}

std::string shown_mass(Mass mass) {
    return units_shown().ounces ? ounces_text(mass) : shown_grams(mass);
}

std::string mass_head() {
    return units_shown().ounces ? "ounces" : "grams";
}

std::string other_mass(Mass mass) {
    if (!tells_both_masses()) return {};
    return units_shown().ounces ? shown_grams(kitchen_mass(mass)) : shown_ounces(mass);
}

std::string in_brackets(std::initializer_list<std::string> amounts) {
    std::string text;
    for (const std::string& amount : amounts)
        if (!amount.empty()) text += (text.empty() ? " (" : ", ") + amount;
    return text.empty() ? text : text + ")";
}

namespace {

/// "0.18 oz (5 g)": what is weighed in grams, said in ounces.
std::string pinch_text(Mass weighed) {
    return significant(weighed.in(ounce), 2) + fmt::format(" oz ({:g} g)", weighed.in(gram));
}

}  // namespace

std::string shown_dose(Mass mass) {
    const Mass weighed = kitchen_additive(mass);
    if (!units_shown().ounces) return fmt::format("{:g} g", weighed.in(gram));
    return weighed > Mass{} && mass < pinch ? pinch_text(weighed) : ounces_text(mass);
}

std::string shown_dose(Volume volume) {
    const Volume measured = kitchen_additive(volume);
    std::string millilitres = fmt::format("{:g} ml", measured.in(millilitre));
    if (!is_imperial()) return millilitres;
    if (measured > Volume{} && volume < drop_of_liquid)
        return significant(measured.in(imperial_fluid_ounce), 2) + " fl oz (" + millilitres + ")";
    return measured_pints_text(volume);
}

std::string shown_weighed(Mass mass) {
    const Mass weighed = kitchen_weighed(mass);
    if (units_shown().ounces) return weighed > Mass{} && mass < pinch ? pinch_text(weighed) : ounces_text(mass);
    return weighed < 5.0 * gram ? fmt::format("{:.2g} g", weighed.in(gram)) : shown_mass(weighed);
}

std::string shown_mass(Mass low, Mass high) {
    if (units_shown().ounces) return ounces_text(low, high);
    if (high.in(gram) < 9999.5) return fmt::format("{:.0f} to {:.0f} g", low.in(gram), high.in(gram));
    return significant(low.in(kilogram), 3) + " to " + significant(high.in(kilogram), 3) + " kg";
}

std::string no_price_text(std::size_t things, std::size_t elsewhere) {
    std::string text;
    if (things > 0) text = things == 1 ? "1 thing has no price" : std::to_string(things) + " things have no price";
    if (elsewhere == 0) return text;
    if (things > 0) text += "; ";
    return text + (elsewhere == 1 ? "1 thing is" : std::to_string(elsewhere) + " things are") +
           " priced in another currency";
}

std::string shown_ounces(Mass mass) {
    return ounces_text(mass);
}

std::string shown_water(Mass water) {
    if (is_imperial()) return measured_pints_text(water_volume(water));
    const double millilitres = water_volume(water).in(millilitre);
    return millilitres < 9999.5 ? fmt::format("{:.0f} ml", millilitres) : significant(millilitres / 1000, 3) + " l";
}

std::string other_water(Mass water) {
    return units_shown().system == UnitSystem::both ? shown_pints(water_volume(water)) : std::string();
}

std::string shown_volume(Volume volume) {
    return units_shown().pints ? pints_text(volume) : litres_text(volume);
}

std::string other_volume(Volume volume) {
    if (!tells_both_volumes()) return {};
    return units_shown().pints ? litres_text(volume) : shown_pints(volume);
}

std::string shown_loose(Volume volume) {
    const ShownUnits& units = units_shown();
    if (units.pints) return pints_text(volume);
    return units.system == UnitSystem::metric ? litres_text(volume) : shown_pints(volume);
}

std::string shown_vessel(Volume volume) {
    return is_imperial() ? pints_text(volume) : litres_text(volume);
}

std::string shown_helping(Volume volume) {
    if (is_imperial() || volume >= 20.0 * millilitre) return shown_vessel(volume);
    return fmt::format("{:.2g} ml", volume.in(millilitre));
}

std::string shown_water(Mass low, Mass high) {
    if (is_imperial()) return measured_pints_text(water_volume(low), water_volume(high));
    if (shown_water(low) == shown_water(high)) return "about " + shown_water(high);
    if (high.in(gram) < 9999.5) return fmt::format("{:.0f} to {:.0f} ml", low.in(gram), high.in(gram));
    return significant(low.in(kilogram), 3) + " to " + significant(high.in(kilogram), 3) + " l";
}

std::string shown_volume(Volume low, Volume high) {
    if (units_shown().pints) return pints_text(low, high);
    if (high.in(litre) >= 0.995) return significant(low.in(litre), 2) + " to " + significant(high.in(litre), 2) + " l";
    return significant(low.in(millilitre), 2) + " to " + significant(high.in(millilitre), 2) + " ml";
}

std::string shown_pints(Volume volume) {
    const double pints = volume.in(imperial_pint);
    return pints < 0.095 ? fmt::format("{:.2f} pt", pints) : significant(pints, 2) + " pt";
}

std::string shown_time(Time time) {
    return time < 1.0 * minute ? "less than a minute" : hours_and_minutes(kitchen_time(time));
}

std::string shown_moment(Time time) {
    const double minutes = time.in(minute), tenths = 10 * time.in(hour);
    if (minutes < 60) return fmt::format("{:.3g} min", minutes);
    return std::abs(tenths - std::round(tenths)) < 1e-6 ? fmt::format("{:g} h", std::round(tenths) / 10)
                                                        : hours_and_minutes(time);
}

std::string shown_gap(Time gap) {
    const double minutes = gap.in(minute);
    const bool whole = std::abs(minutes - std::round(minutes)) < 1e-6;
    if (minutes < 5 && !whole) return fmt::format("{:.0f} s", gap.in(second));
    return minutes < 60 ? fmt::format("{:.3g} min", minutes) : hours_and_minutes(gap);
}

constexpr double least_soak_told = 5;  // seconds

std::string shown_soak_time(Time time) {
    const Time kitchen = kitchen_soak_time(time);
    const double seconds = kitchen.in(second);
    if (seconds < 57.5) return fmt::format("{:.0f} s", std::max(least_soak_told, seconds));
    return seconds < 285 ? fmt::format("{:g} min", seconds / 60) : hours_and_minutes(kitchen);
}

std::string shown_soak_time(Time low, Time high) {
    const double seconds = high.in(second);
    const auto both = [&](double step, double unit, const char* symbol) {
        const auto shown = [&](double time) {
            return step * std::round(std::max(time, least_soak_told) / unit / step);
        };
        const double from = shown(low.in(second)), to = shown(seconds);
        return from == to ? fmt::format("{:g} {}", to, symbol) : fmt::format("{:g} to {:g} {}", from, to, symbol);
    };
    if (seconds < 117.5) return both(5, 1, "s");
    if (seconds < 600) return both(low.in(second) < 285 ? 0.5 : 1, 60, "min");
    if (seconds < 3450) return both(low.in(second) < 570 ? 1 : 5, 60, "min");
    return shown_soak_time(low) + " to " + shown_soak_time(high);
}

std::string shown_length(Length length) {
    return shown_length(length, one_unit({length}));
}

std::string shown_length(Length low, Length high) {
    return shown_length(low, high, one_unit({low, high}));
}

std::string shown_as_told(Length length) {
    if (units_shown().feet) return feet_text(length);
    return fmt::format("{:g} m", std::round(100 * length.in(metre)) / 100);
}

std::string shown_hand() {
    return units_shown().feet ? "4 x 4 in" : "10 x 10 cm";
}

std::string shown_whole_percent(double share) {
    constexpr double last_digits = 1e-12;
    return shown_percent(std::round(100 * share * (1 + last_digits)) / 100);
}

std::string shown_percent(Ratio share) {
    const double percents = share.in(percent);
    return percents < 9.95 ? fmt::format("{:.2g} %", percents) : fmt::format("{:.0f} %", percents);
}

std::string shown_temperature(Temperature temperature) {
    if (units_shown().fahrenheit) return fahrenheit_text(temperature);
    const double tenths = std::round(10 * temperature.in_celsius()) + 0.0;  // of -0.04 a plain 0
    return fmt::format("{:g} degC", tenths / 10);
}

std::string shown_count(double count) {
    if (count == 0) return "none";
    if (count < 0.5) return "less than 1";
    return count < 9.5 ? fmt::format("{:.0f}", count) : significant(count, 2);
}

std::string shown_count_range(double low, double high) {
    const double least = std::round(low), most = std::round(high);
    return least == most ? fmt::format("{:.0f}", least) : fmt::format("{:.0f} to {:.0f}", least, most);
}

std::string shown_ratio(Ratio ratio) {
    return fmt::format("{:.2f}", double(ratio));
}

}  // namespace baitwright
