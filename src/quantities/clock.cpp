#include "quantities/clock.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <optional>

#include "quantities/fault.h"
#include "quantities/number_text.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// One or two digits, or -1.
int digits_of(std::string_view text) {
    if (text.empty() || text.size() > 2 || text.find_first_not_of("0123456789") != std::string_view::npos) return -1;
    return std::stoi(std::string(text));
}

enum class HalfOfDay { none, morning, afternoon };

struct DayHalfName {
    std::string_view ending;
    HalfOfDay half;
};
constexpr std::array day_halves{DayHalfName{"am", HalfOfDay::morning}, DayHalfName{"a.m.", HalfOfDay::morning},
                                DayHalfName{"pm", HalfOfDay::afternoon}, DayHalfName{"p.m.", HalfOfDay::afternoon}};

/// Takes the "pm" off the end of "9.30 pm", and the blank before it.
HalfOfDay take_half(std::string_view& folded) {
    for (const DayHalfName& name : day_halves) {
        if (!folded.ends_with(name.ending)) continue;
        folded.remove_suffix(name.ending.size());
        folded = trimmed(folded);
        return name.half;
    }
    return HalfOfDay::none;
}

struct HandsOfClock {
    int hours, minutes;
};

/// "8:30", "8:5", "8.30", "0830"; with `hours_alone` "8" too. Digits only; the range is not looked at.
HandsOfClock hands_in(std::string_view text, bool hours_alone) {
    if (const auto colon = text.find(':'); colon != std::string_view::npos)
        return {digits_of(text.substr(0, colon)), digits_of(text.substr(colon + 1))};
    if (const auto point = text.find('.'); point != std::string_view::npos && text.size() == point + 3)
        return {digits_of(text.substr(0, point)), digits_of(text.substr(point + 1))};
    if (text.size() == 4) return {digits_of(text.substr(0, 2)), digits_of(text.substr(2))};
    return {hours_alone ? digits_of(text) : -1, 0};
}

std::optional<int> minutes_of_clock(std::string_view text) {
    const std::string folded = folded_name(text);
    std::string_view rest = folded;
    const HalfOfDay half = take_half(rest);
    auto [hours, minutes] = hands_in(rest, half != HalfOfDay::none);
    if (hours < 0 || hours > 23 || minutes < 0 || minutes > 59) return std::nullopt;
    if (half != HalfOfDay::none) {
        if (hours < 1 || hours > 12) return std::nullopt;
        hours = hours % 12 + (half == HalfOfDay::afternoon ? 12 : 0);
    }
    return 60 * hours + minutes;
}

}  // namespace

int parse_clock(std::string_view text) {
    if (const auto minutes = minutes_of_clock(text)) return *minutes;
    throw InputError("not-a-clock", "'" + std::string(text) + "' is not a time of day", "write it as in 08:30");
}

bool is_clock(std::string_view text) {
    if (text.find(':') != std::string_view::npos || minutes_of_clock(text)) return true;
    const std::string folded = folded_name(text);
    std::string_view rest = folded;
    return take_half(rest) != HalfOfDay::none && is_bare_number(rest);
}

std::string clock_text(double minutes_since_midnight) {
    const long minute_of_day = ((std::lround(minutes_since_midnight) % 1440) + 1440) % 1440;
    return fmt::format("{:02}:{:02}", minute_of_day / 60, minute_of_day % 60);
}

std::string hours_and_minutes(Time time) {
    const long whole = std::lround(time.in(minute));
    if (whole < 60) return fmt::format("{} min", whole);
    return whole % 60 ? fmt::format("{} h {} min", whole / 60, whole % 60) : fmt::format("{} h", whole / 60);
}

}  // namespace baitwright
