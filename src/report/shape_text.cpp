#include "report/shape_text.h"

#include <fmt/format.h>

#include "quantities/units.h"
#include "report/display.h"
#include "report/level_cup.h"

namespace baitwright {

namespace {

/// What is meant by level, and what is in it where that is not done.
std::string level_cup_text(const PortionsAnswer& portions) {
    std::string text = fmt::format(": {}.", level_cup_words);
    if (!portions.riddled_each) return text;
    return text +
           fmt::format(" Riddled in loose it would be about {}.", shown_mass(scale_mass(*portions.riddled_each)));
}

}  // namespace

std::string portions_text(const PortionsAnswer& portions) {
    return fmt::format("{} {}{} of {}", portions.count, portions.called, portions.count == 1 ? "" : "s",
                       portions.diameter > Length{} ? fmt::format("{:.0f} mm", portions.diameter.in(millimetre))
                                                    : shown_volume(portions.each));
}

std::string mass_of_each(const PortionsAnswer& portions) {
    return "about " + shown_mass(scale_mass(portions.mass_each)) + (portions.count == 1 ? "" : " each");
}

std::string counted_range(const Range<Ratio>& count, const std::string& called) {
    const std::string shown = shown_count_range(count.low, count.high);
    return shown + " " + called + (shown == "1" ? "" : "s");
}

std::string shape_text(const PortionsAnswer& portions, MixState state, int tubs) {
    const std::string mass = mass_of_each(portions);
    const std::string ones = portions_text(portions);
    if (state == MixState::squeezed)
        return fmt::format("{} {}, {}.", tubs > 1 ? "From all the tubs squeeze" : "Squeeze", ones, mass);
    const std::string filled = fmt::format("{} {} level {}, {}", tubs > 1 ? "From all the tubs fill" : "Fill",
                                           portions.count, ones.substr(ones.find(' ') + 1), mass);
    return portions.called == "cup" ? filled + level_cup_text(portions) : filled + "; do not press.";
}

}  // namespace baitwright
