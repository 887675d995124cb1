#include "quantities/clock.h"

#include <fmt/format.h>

#include <cmath>

#include "quantities/fault.h"

namespace baitwright {

namespace {

/// One or two digits, or -1.
int digits_of(std::string_view text) {
    if (text.empty() || text.size() > 2 || text.find_first_not_of("0123456789") != std::string_view::npos) return -1;
    return std::stoi(std::string(text));
}

}  // namespace

int parse_clock(std::string_view text) {
    const auto colon = text.find(':');
    const int hours = colon == std::string_view::npos ? -1 : digits_of(text.substr(0, colon));
    const int minutes = colon == std::string_view::npos ? -1 : digits_of(text.substr(colon + 1));
    if (hours < 0 || hours > 23 || minutes < 0 || minutes > 59)
        throw InputError("not-a-clock", "'" + std::string(text) + "' is not a time of day", "write it as in 08:30");
    return 60 * hours + minutes;
}

std::string clock_text(double minutes_since_midnight) {
    const long minute_of_day = ((std::lround(minutes_since_midnight) % 1440) + 1440) % 1440;
    return fmt::format("{:02}:{:02}", minute_of_day / 60, minute_of_day % 60);
}

}  // namespace baitwright
