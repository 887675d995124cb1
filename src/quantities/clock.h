#pragma once

#include <string>
#include <string_view>

#include "quantities/quantity.h"

/// A time of the day, as minutes since midnight; and how long something takes by it.
namespace baitwright {

/// "08:30", "8:5", "8.30", "0830", "9am", "9.30 pm"; noon is 12pm, midnight 12am. InputError "not-a-clock".
int parse_clock(std::string_view text);

/// Whether it is meant as a time of the day, right or wrong ("11:20", "13pm"), and not as so many minutes ("110 min").
bool is_clock(std::string_view text);

/// "08:30", to the nearest minute, whatever the day.
std::string clock_text(double minutes_since_midnight);

/// "25 min", "3 h", "3 h 20 min", to the nearest minute.
std::string hours_and_minutes(Time time);

}  // namespace baitwright
