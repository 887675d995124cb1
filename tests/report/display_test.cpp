#include "report/display.h"

#include <catch2/catch.hpp>
#include <limits>
#include <stdexcept>

#include "quantities/units.h"

using namespace baitwright;

TEST_CASE("masses are shown in grams, from ten kilos in kilos, and in ounces and pounds") {
    CHECK(shown_mass(435.4 * gram) == "435 g");
    CHECK(shown_mass(9999.4 * gram) == "9999 g");
    CHECK(shown_mass(12.345 * kilogram) == "12.3 kg");
    CHECK(shown_mass(2.54 * gram) == "2.5 g");
    CHECK(shown_ounces(400.0 * gram) == "14.1 oz");
    CHECK(shown_ounces(453.6 * gram) == "1 lb");
    CHECK(shown_ounces(453.0 * gram) == "1 lb");
    CHECK(shown_ounces(1.0 * kilogram) == "2 lb 3 oz");
    CHECK(shown_pack(2.5 * kilogram) == "2.5 kg");
}

TEST_CASE("estimates of volume carry two digits and no more") {
    CHECK(shown_volume(2.5527 * litre) == "2.6 l");
    CHECK(shown_volume(637.0 * millilitre) == "640 ml");
    CHECK(shown_volume(996.0 * millilitre) == "1.0 l");
    CHECK(shown_volume(0.64 * litre, 1.2 * litre) == "0.64 to 1.2 l");
    CHECK(shown_water(435.0 * gram, 800.0 * gram) == "435 to 800 ml");
    CHECK(shown_water(9.91 * kilogram, 15.9 * kilogram) == "9.91 to 15.9 l");
    CHECK(shown_pints(568.3 * millilitre) == "1.0 pt");
}

TEST_CASE("times are shown no finer than one can keep them") {
    CHECK(shown_time(30.0 * second) == "less than a minute");
    CHECK(shown_time(8.4 * minute) == "8 min");
    CHECK(shown_time(18.6 * minute) == "20 min");
    CHECK(shown_time(58.0 * minute) == "1 h");
    CHECK(shown_time(128.0 * minute) == "2 h 10 min");
    CHECK(shown_time(479.0 * minute) == "8 h");
    CHECK(shown_time(17.6 * hour) == "18 h");
}

TEST_CASE("counts and shares are rounded to what is known") {
    CHECK(shown_count(56789) == "57,000");
    CHECK(shown_count(9.6) == "9.6");
    CHECK(shown_count(0) == "none");
    CHECK(shown_percent(0.405) == "40 %");
    CHECK(shown_percent(0.025) == "2.5 %");
    CHECK(significant(1234567, 3) == "1,230,000");
    CHECK(significant(0, 2) == "0.0");
    CHECK_THROWS_AS(significant(std::numeric_limits<double>::infinity(), 2), std::logic_error);
    CHECK(shown_count_range(17.9, 22.4) == "18 to 22");
    CHECK(shown_count_range(3.2, 3.4) == "3");
}

TEST_CASE("a soak is told to half a minute while that matters, and a short one in seconds") {
    CHECK(shown_soak_time(22.0 * second) == "20 s");
    CHECK(shown_soak_time(1.0 * second) == "5 s");
    CHECK(shown_soak_time(90.0 * second) == "1.5 min");
    CHECK(shown_soak_time(6.2 * minute) == "6 min");
    CHECK(shown_soak_time(18.4 * minute) == "18 min");
    CHECK(shown_whole_percent(0.045) == "5 %");
    CHECK(shown_whole_percent(0.045 - 1e-16) == "5 %");
    CHECK(shown_whole_percent(0.0449) == "4 %");
    CHECK(shown_soak_time(56.0 * minute) == "55 min");
    CHECK(shown_soak_time(0.4 * second, 1.7 * second) == "5 s");  // as the middle of it, which lies within
    CHECK(shown_soak_time(2.0 * second, 12.0 * second) == "5 to 10 s");
    CHECK(shown_soak_time(40.0 * second, 100.0 * second) == "40 to 100 s");
    CHECK(shown_soak_time(0.7 * minute, 3.0 * minute) == "0.5 to 3 min");
    CHECK(shown_soak_time(5.2 * minute, 9.4 * minute) == "5 to 9 min");
    CHECK(shown_soak_time(12.0 * minute, 61.0 * minute) == "12 min to 1 h");
    CHECK(shown_soak_time(50.0 * minute, 200.0 * minute) == "50 min to 3 h 20 min");
}

TEST_CASE("estimated lengths are shown in centimetres while they are short, a range in one unit") {
    CHECK(shown_length(58.0 * millimetre) == "6 cm");
    CHECK(shown_length(0.548 * metre) == "0.55 m");
    CHECK(shown_length(1.23 * metre) == "1.2 m");
    CHECK(shown_length(37.0 * millimetre, 99.0 * millimetre) == "4 to 10 cm");
    CHECK(shown_length(0.097 * metre, 0.251 * metre) == "0.10 to 0.25 m");
    CHECK(shown_length(0.58 * metre, 1.57 * metre) == "0.58 to 1.6 m");
}

TEST_CASE("a range of lengths is told in one unit") {
    CHECK(shown_length(0.08 * metre, 1.7 * metre) == "0.08 to 1.7 m");
    CHECK(shown_length(0.04 * metre, 0.09 * metre) == "4 to 9 cm");
    CHECK(shown_length(0.37 * metre, 0.83 * metre) == "0.37 to 0.83 m");
    for (const double low : {0.001, 0.05, 0.094, 0.096, 0.3, 0.99, 1.2}) {
        for (const double high : {0.06, 0.2, 0.994, 0.996, 3.0, 40.0}) {
            if (low > high) continue;
            const std::string text = shown_length(low * metre, high * metre);
            INFO(text);  // read with the unit of its end, the lower number is the lower length
            const bool in_cm = text.substr(text.size() - 3) == " cm";
            CHECK(text.find(in_cm ? " m" : " cm") == std::string::npos);
            CHECK(std::stod(text) * (in_cm ? 0.01 : 1) == Approx(low).margin(0.0055).epsilon(0.05));
        }
    }
}

TEST_CASE("a range of water whose ends look alike is told once") {
    CHECK(shown_water(1.0 * gram, 1.2 * gram) == "about 1 ml");
    CHECK(shown_water(1.0 * gram, 2.0 * gram) == "1 to 2 ml");
}
