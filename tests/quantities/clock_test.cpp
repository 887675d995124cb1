#include "quantities/clock.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <string>

#include "quantities/fault_of.h"

using namespace baitwright;

TEST_CASE("a time of the day is read as people write it") {
    struct Row {
        const char* typed;
        int minutes;
    };
    const Row row = GENERATE(values<Row>({
        {"08:30", 510},    {"8:5", 485},        {"9.30", 570},   {"09.30", 570},  {"0930", 570},
        {"2359", 1439},    {"9am", 540},        {"9 am", 540},   {"9 AM", 540},   {"9.30am", 570},
        {"9:30 pm", 1290}, {"12am", 0},         {"12pm", 720},   {"12.30am", 30}, {"12:45 pm", 765},
        {"9 a.m.", 540},   {"9.30 p.m.", 1290}, {" 9:30 ", 570}, {"0930am", 570}, {"11pm", 1380},
    }));
    CAPTURE(row.typed);
    CHECK(parse_clock(row.typed) == row.minutes);
    CHECK(is_clock(row.typed));
}

TEST_CASE("what is no time of the day is refused with how to write one") {
    const char* typed = GENERATE("", "9", "930", "9.3", "9.300", "24:00", "2460", "8:60", "13pm", "0am", "am", "9 xm",
                                 "-9:30", "9:30:00", "nine", "13:00 pm", "110 min");
    CAPTURE(typed);
    const Fault fault = fault_of([&] { parse_clock(typed); });
    CHECK(fault.code == "not-a-clock");
    CHECK(fault.hint == "write it as in 08:30");
}

TEST_CASE("a clock that is wrong is still meant as one, and minutes are not") {
    for (const char* typed : {"24:00", "13pm", "9:", "0 am"}) {
        CAPTURE(typed);
        CHECK(is_clock(typed));
    }
    for (const char* typed : {"110", "110 min", "40min", "1.5 h", "1h30m", "half an hour", "am", ""}) {
        CAPTURE(typed);
        CHECK_FALSE(is_clock(typed));
    }
}

TEST_CASE("each minute of the day is read from all the ways to write it") {
    CHECK(rc::check([] {
        const int minute = *rc::gen::inRange(0, 1440);
        const std::string text = clock_text(minute);
        const std::string hours = text.substr(0, 2), minutes = text.substr(3);
        const int twelve = minute / 60 % 12 == 0 ? 12 : minute / 60 % 12;
        RC_ASSERT(parse_clock(text) == minute);
        RC_ASSERT(parse_clock(hours + minutes) == minute);
        RC_ASSERT(parse_clock(hours + '.' + minutes) == minute);
        RC_ASSERT(parse_clock(std::to_string(twelve) + '.' + minutes + (minute < 720 ? "am" : " pm")) == minute);
    }));
}
