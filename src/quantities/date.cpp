#include "quantities/date.h"

#include <fmt/format.h>

#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/number_text.h"

namespace baitwright {

namespace {

using std::chrono::year_month_day;

constexpr const char* example = "write a date as in 2026-03-01, year first";

/// So many digits at that place, as a number; -1 where there is something else.
int digits(std::string_view text, std::size_t place, std::size_t count) {
    int number = 0;
    for (const char c : text.substr(place, count)) {
        if (c < '0' || c > '9') return -1;
        number = 10 * number + (c - '0');
    }
    return number;
}

}  // namespace

Date parse_stored_date(std::string_view text) {
    const std::string_view written = trimmed(text);
    const std::size_t behind_year = written.find('-');
    const bool has_form =
        (behind_year == 4 || behind_year == 5) && written.size() == behind_year + 6 && written[behind_year + 3] == '-';
    const int year = has_form ? digits(written, 0, behind_year) : -1;
    const int month = has_form ? digits(written, behind_year + 1, 2) : -1;
    const int day = has_form ? digits(written, behind_year + 4, 2) : -1;
    if (year < 0 || month < 0 || day < 0) throw InputError("not-a-date", in_quotes(text) + " is not a date", example);
    const year_month_day date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                              std::chrono::day(static_cast<unsigned>(day))};
    if (!date.ok()) throw InputError("not-a-date", in_quotes(text) + " is not a day of the calendar", example);
    return date;
}

Date parse_date(std::string_view text) {
    const Date date = parse_stored_date(text);
    const int year = static_cast<int>(year_month_day(date).year());
    if (year < 1900 || year > 2999)
        throw InputError("not-a-date", in_quotes(text) + " is out of range",
                         "a date can be from 1900-01-01 to 2999-12-31");
    return date;
}

std::string date_text(Date date) {
    const year_month_day parts(date);
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(parts.year()), static_cast<unsigned>(parts.month()),
                       static_cast<unsigned>(parts.day()));
}

std::string date_or_blank(const std::optional<Date>& date) {
    return date ? date_text(*date) : "";
}

Date year_after(Date date) {
    const year_month_day next = year_month_day(date) + std::chrono::years(1);
    if (next.ok()) return next;
    return std::chrono::year_month_day_last(next.year(), std::chrono::month_day_last(next.month()));
}

}  // namespace baitwright
