#include "report/one_unit.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/imperial_text.h"
#include "report/shown_units.h"
#include "report/significant.h"

namespace baitwright {

LengthUnit one_unit(const std::vector<Length>& lengths) {
    const auto is_short = [](Length length) { return std::abs(length.si()) < 0.095; };
    const auto is_long = [](Length length) { return std::abs(length.si()) >= 0.995; };
    const bool in_centimetres =
        std::any_of(lengths.begin(), lengths.end(), is_short) && std::none_of(lengths.begin(), lengths.end(), is_long);
    return in_centimetres ? LengthUnit::centimetres : LengthUnit::metres;
}

std::string shown_length(Length length, LengthUnit unit) {
    if (units_shown().feet) return estimated_feet_text(length);
    const double metres = std::abs(length.si());
    if (unit == LengthUnit::centimetres) return fmt::format("{:.0f} cm", 100 * metres);
    return metres < 0.995 ? fmt::format("{:.2f} m", metres) : significant(metres, 2) + " m";
}

std::string shown_length(Length low, Length high, LengthUnit unit) {
    if (units_shown().feet) return estimated_feet_text(low, high);
    const std::string from = shown_length(low, unit);
    return from.substr(0, from.find(' ')) + " to " + shown_length(high, unit);
}

}  // namespace baitwright
