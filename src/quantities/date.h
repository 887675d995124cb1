#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>

namespace baitwright {

/// A day of the calendar, counted from 1970-01-01. Nothing here asks what day it is.
using Date = std::chrono::sys_days;

/// Reads "2026-03-01" (ISO 8601, a day of the Gregorian calendar) from 1900-01-01 to 2999-12-31; throws InputError
/// "not-a-date".
Date parse_date(std::string_view text);

/// The same of what was stored, which may have been reckoned to lie beyond those years; throws InputError "not-a-date".
Date parse_stored_date(std::string_view text);

/// Writes "2026-03-01".
std::string date_text(Date date);

/// The same, and nothing for no date.
std::string date_or_blank(const std::optional<Date>& date);

/// The same day one year on; of the 29th of February the 28th.
Date year_after(Date date);

}  // namespace baitwright
