#include "report/feed_size.h"

#include <fmt/format.h>

#include "report/display.h"

namespace baitwright {

std::string shown_size(const FeedSize& size) {
    if (const Mass* mass = std::get_if<Mass>(&size)) return shown_pack(*mass);
    if (const Length* width = std::get_if<Length>(&size)) return fmt::format("{:g} mm", width->in(millimetre));
    const double millilitres = std::get<Volume>(size).in(millilitre);
    return millilitres < 1000 ? fmt::format("{:.3g} ml", millilitres) : fmt::format("{:.3g} l", millilitres / 1000);
}

}  // namespace baitwright
