#include "report/wait_text.h"

#include <fmt/format.h>

#include <cmath>

#include "quantities/units.h"
#include "report/display.h"
#include "report/significant.h"

namespace baitwright {

namespace {

std::string minutes_and_seconds(double seconds) {
    const long whole = std::lround(seconds), rest = whole % 60;
    return rest ? fmt::format("{} min {} s", whole / 60, rest) : fmt::format("{} min", whole / 60);
}

}  // namespace

std::string shown_wait(Time time) {
    const double seconds = time.in(second);
    if (seconds < 0.05) return "at once";
    if (seconds < 9.5) return significant(seconds, seconds < 1.95 ? 2 : 1) + " s";
    if (seconds < 57.5) return fmt::format("{:.0f} s", 5 * std::round(seconds / 5));
    if (seconds < 295) return minutes_and_seconds(10 * std::round(seconds / 10));
    return seconds < 585 ? minutes_and_seconds(30 * std::round(seconds / 30)) : shown_time(time);
}

std::string shown_wait(Time low, Time high) {
    const std::string from = shown_wait(low), to = shown_wait(high);
    if (to == "at once") return "at once";
    if (from == "at once") return "up to " + to;
    if (from == to) return "about " + to;
    const auto unit = [](const std::string& text) { return text.substr(text.find(' ') + 1); };
    return unit(from) == unit(to) ? from.substr(0, from.find(' ')) + " to " + to : from + " to " + to;
}

}  // namespace baitwright
