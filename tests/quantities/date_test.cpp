#include "quantities/date.h"

#include <catch2/catch.hpp>

#include "quantities/fault_of.h"

using namespace baitwright;
using std::chrono::days;

TEST_CASE("a date is read and written the same, year first") {
    for (const char* text : {"1970-01-01", "2026-03-01", "2024-02-29", "2000-02-29", "1999-12-31"})
        CHECK(date_text(parse_date(text)) == text);
    CHECK(parse_date(" 2026-03-01 ") == parse_date("2026-03-01"));
}

// Days between known days: 1970 to 2000 is 30 years with 7 leap days; counted by hand.
TEST_CASE("days are counted over months, years and leap days") {
    CHECK(parse_date("2000-01-01") - parse_date("1970-01-01") == days(30 * 365 + 7));
    CHECK(parse_date("2024-02-28") + days(2) == parse_date("2024-03-01"));
    CHECK(parse_date("2026-02-28") + days(1) == parse_date("2026-03-01"));
    CHECK(parse_date("2026-12-31") + days(1) == parse_date("2027-01-01"));
}

TEST_CASE("what is no day of the calendar is refused, and so is another order") {
    for (const char* text : {"2026-02-29", "2026-13-01", "2026-00-10", "2026-04-31", "1900-02-29", "01-03-2026",
                             "1.3.2026", "2026-3-1", "2026-03-01T10:00", "yesterday", "", "2026-0a-01", "-026-03-01"}) {
        CAPTURE(text);
        CHECK(fault_of([&] { parse_date(text); }).code == "not-a-date");
    }
}

TEST_CASE("a year after the 29th of February is the 28th") {
    CHECK(year_after(parse_date("2026-03-01")) == parse_date("2027-03-01"));
    CHECK(year_after(parse_date("2024-02-29")) == parse_date("2025-02-28"));
    CHECK(year_after(parse_date("2023-02-28")) == parse_date("2024-02-28"));
}

TEST_CASE("a date lies within living memory and use, but what was reckoned and stored may lie beyond") {
    for (const char* text : {"1900-01-01", "2999-12-31"}) CHECK(date_text(parse_date(text)) == text);
    for (const char* text : {"1899-12-31", "3000-01-01", "9999-12-31", "0001-01-01"}) {
        CAPTURE(text);
        CHECK(fault_of([&] { parse_date(text); }).hint == "a date can be from 1900-01-01 to 2999-12-31");
        CHECK(date_text(parse_stored_date(text)) == text);
    }
    CHECK(date_text(parse_stored_date("10000-09-30")) == "10000-09-30");
    CHECK(parse_stored_date("9999-12-31") < parse_stored_date("10000-01-01"));
}
