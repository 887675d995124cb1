#include "report/wait_text.h"

#include <catch2/catch.hpp>

#include "quantities/units.h"

using namespace baitwright;

TEST_CASE("a wait is said in seconds, then in minutes and seconds, no finer than it is known") {
    struct Said {
        double seconds;
        const char* text;
    };
    for (const Said& said :
         {Said{0.01, "at once"}, Said{1.83, "1.8 s"}, Said{9.2, "9 s"}, Said{33, "35 s"}, Said{57, "55 s"},
          Said{58, "1 min"}, Said{78, "1 min 20 s"}, Said{121, "2 min"}, Said{294, "4 min 50 s"}, Said{300, "5 min"},
          Said{380, "6 min 30 s"}, Said{600, "10 min"}, Said{3900, "1 h 5 min"}})
        CHECK(shown_wait(said.seconds * second) == said.text);
}

TEST_CASE("a longer wait is never said to be shorter") {
    const auto seconds_of = [](const std::string& text) {
        double all = 0, value = 0;
        char unit[8];
        for (std::size_t at = 0; at < text.size();) {
            int used = 0;
            if (std::sscanf(text.c_str() + at, "%lf %7s%n", &value, unit, &used) != 2) break;
            all += value * (unit[0] == 'h' ? 3600 : unit[0] == 'm' ? 60 : 1);
            at += static_cast<std::size_t>(used);
        }
        return all;
    };
    double last = 0;
    for (double seconds = 0.1; seconds < 1200; seconds += 0.1) {
        const double said = seconds_of(shown_wait(seconds * second));
        CHECK(said >= last);
        last = said;
    }
}

TEST_CASE("a range of waits names its unit once where it is one") {
    CHECK(shown_wait(6.0 * second, 34.0 * second) == "6 to 35 s");
    CHECK(shown_wait(44.0 * second, 121.0 * second) == "45 s to 2 min");
    CHECK(shown_wait(80.0 * second, 150.0 * second) == "1 min 20 s to 2 min 30 s");
    CHECK(shown_wait(120.0 * second, 420.0 * second) == "2 to 7 min");
    CHECK(shown_wait(9.1 * second, 9.3 * second) == "about 9 s");
    CHECK(shown_wait(Time{}, Time{}) == "at once");
    CHECK(shown_wait(Time{}, 3.0 * second) == "up to 3 s");
}
