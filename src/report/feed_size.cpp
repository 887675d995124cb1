#include "report/feed_size.h"

#include <fmt/format.h>

#include "report/display.h"
#include "report/shown_units.h"

namespace baitwright {

std::string shown_size(const FeedSize& size) {
    if (const Mass* mass = std::get_if<Mass>(&size))
        return units_shown().ounces ? shown_mass(*mass) : shown_pack(*mass);
    if (const Length* width = std::get_if<Length>(&size)) return fmt::format("{:g} mm", width->in(millimetre));
    const Volume volume = std::get<Volume>(size);
    if (units_shown().system == UnitSystem::imperial) return shown_vessel(volume);
    const double millilitres = volume.in(millilitre);
    return millilitres < 1000 ? fmt::format("{:.3g} ml", millilitres) : fmt::format("{:.3g} l", millilitres / 1000);
}

std::string shown_reckoned(double times) {
    if (times == 1) return "reckoned once";
    return fmt::format("reckoned {:.3g} times", times);
}

}  // namespace baitwright
