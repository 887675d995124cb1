#pragma once

#include <string>
#include <string_view>

/// A time of the day, as minutes since midnight.
namespace baitwright {

/// "08:30", "8:5". InputError "not-a-clock".
int parse_clock(std::string_view text);

/// "08:30", to the nearest minute, whatever the day.
std::string clock_text(double minutes_since_midnight);

}  // namespace baitwright
