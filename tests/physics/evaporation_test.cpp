#include "physics/evaporation.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "physics/water.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

double kilograms_an_hour(double water, double air, double humidity, double wind) {
    return 3600 * carrier_evaporation(Temperature::from_celsius(water), Temperature::from_celsius(air), humidity,
                                      wind * metre_per_second)
                      .si();
}

double row(const std::string& id, const std::string& file = "evaporation.csv") {
    for (const auto& r : reference::rows_in(file))
        if (r.at("id") == id) return reference::numbers_in(r.at("expected")).front();
    throw std::runtime_error("no row " + id);
}

constexpr double standard_air = 101325;  // Pa

/// kg/m2 h from a still face as warm as the air, by Shah 2014 (from memory): C rho (rho_air - rho_face)^(1/3) (Ww -
/// Wa), with rho that of the dry air at the face, C 40, or 35 where the densities differ by more than 0.02 kg/m3; at
/// least 0.00005 (pw - pa). Ideal gases: 287.055 and 461.52 J/(kg K).
double shah_kilograms_an_hour(double celsius, double humidity) {
    const double kelvin = celsius + 273.15, face = vapour_pressure(Temperature::from_celsius(celsius)).si(),
                 air = humidity * face;
    const auto dry = [&](double vapour) { return (standard_air - vapour) / (287.055 * kelvin); };
    const auto moist = [&](double vapour) { return dry(vapour) + vapour / (461.52 * kelvin); };
    const auto in_air = [](double vapour) { return 0.621945 * vapour / (standard_air - vapour); };
    const double lighter = moist(air) - moist(face);
    const double rises = (lighter > 0.02 ? 35 : 40) * dry(face) * std::cbrt(lighter) * (in_air(face) - in_air(air));
    return std::max(rises, 0.00005 * (face - air));
}

double psychrometric_row(const std::string& id) {
    return row(id, "psychrometry.csv");
}

Temperature celsius(double value) {
    return Temperature::from_celsius(value);
}

Weather weather(double air, double humidity, double wind, double sun = 0, double share = 1) {
    return {celsius(air), humidity, wind * metre_per_second, HeatFlux::from_si(sun), share};
}

}  // namespace

// Source: tests/reference/latent_heat.csv (IAPWS-95).
TEST_CASE("turning water into vapour takes what the steam tables say") {
    for (const auto& r : reference::rows_in("latent_heat.csv")) {
        CAPTURE(r.at("id"), r.at("source"));
        const double celsius = reference::numbers_in(r.at("inputs")).front();
        CHECK(latent_heat(Temperature::from_celsius(celsius)).si() / 1e3 ==
              Approx(std::stod(r.at("expected"))).epsilon(0).margin(0.1));
    }
}

// Source: tests/reference/evaporation.csv, Carrier's form: 25 degC water and air at 50 % humidity; 15 degC bait, 20
// degC air at 60 %. The same equation on both sides: a check of coding.
TEST_CASE("an open face loses water as Carrier's form has it: a check of coding") {
    CHECK(kilograms_an_hour(25, 25, 0.5, 0) == Approx(row("EVAPORATION-02")).epsilon(1e-3));
    CHECK(kilograms_an_hour(25, 25, 0.5, 0.5) == Approx(row("EVAPORATION-03")).epsilon(1e-3));
    CHECK(kilograms_an_hour(25, 25, 0.5, 2) == Approx(row("EVAPORATION-04")).epsilon(1e-3));
    CHECK(kilograms_an_hour(15, 20, 0.6, 2) == Approx(row("EVAPORATION-07")).epsilon(1e-3));
}

// Source: tests/reference/evaporation.csv, row 01: a handbook's other form, (25 + 19 v) A (xs - x), with its example of
// a pool of 500 m2, wind 0.5 m/s and air at 0.0115 kg/kg; xs is that of water at 24.8 degC.
TEST_CASE("a pool loses what another handbook's form says, within a fifth") {
    const auto pressure = [](double kilograms_in_air) {
        return kilograms_in_air * standard_air / (0.622 + kilograms_in_air);
    };
    const double pool = 24.8, humidity = pressure(0.0115) / pressure(0.019826);
    CHECK(vapour_pressure(Temperature::from_celsius(pool)).si() == Approx(pressure(0.019826)).epsilon(0.005));
    CHECK(500 * kilograms_an_hour(pool, pool, humidity, 0.5) / 3600 == Approx(row("EVAPORATION-01")).epsilon(0.2));
}

// Source: Shah 2014 (constants from memory); the share in the code is one number for all of these.
TEST_CASE("in still air a face as warm as the air loses what natural convection takes, within a fifth") {
    for (double celsius = 5; celsius <= 30; celsius += 5)
        for (const double humidity : {0.3, 0.5, 0.7, 0.9}) {
            CAPTURE(celsius, humidity);
            CHECK(still_air_share * kilograms_an_hour(celsius, celsius, humidity, 0) ==
                  Approx(shah_kilograms_an_hour(celsius, humidity)).epsilon(0.2));
        }
}

TEST_CASE("air that is damper than the water's face takes nothing") {
    CHECK(kilograms_an_hour(5, 25, 1.0, 3) == 0);
}

// Source: tests/reference/psychrometry.csv, rows 02, 03, 04 and 06: ASHRAE 2017 and psychrolib.
TEST_CASE("damp air holds the vapour that the psychrometric tables say") {
    CHECK(humidity_ratio(vapour_pressure(celsius(25)), standard_air_pressure) ==
          Approx(psychrometric_row("PSYCHRO-02")).epsilon(5e-3));
    CHECK(humidity_ratio(Pressure::from_si(3169.7), Pressure::from_si(95461)) ==
          Approx(psychrometric_row("PSYCHRO-03")).epsilon(1e-6));
    CHECK(humidity_ratio_at_wet_bulb(celsius(30), celsius(25), Pressure::from_si(95461)) ==
          Approx(psychrometric_row("PSYCHRO-04")).epsilon(3e-4));
    const double dew = psychrometric_row("PSYCHRO-06");
    CHECK(vapour_pressure(celsius(dew - 1e-3)) < 0.8 * vapour_pressure(celsius(25)));
    CHECK(vapour_pressure(celsius(dew + 1e-3)) > 0.8 * vapour_pressure(celsius(25)));
}

TEST_CASE("no row of the psychrometric tables goes untested") {
    std::string ids;
    for (const auto& r : reference::rows_in("psychrometry.csv")) ids += r.at("id").substr(8) + " ";
    CHECK(ids == "02 03 04 06 07 ");  // each has its check above or below
}

// Source: the same file, row 07: psychrolib.
TEST_CASE("a wet bulb shows what psychrolib says") {
    CHECK(wet_bulb(celsius(20), 0.5).in_celsius() == Approx(psychrometric_row("PSYCHRO-07")).epsilon(0).margin(0.01));
    const auto row_07 = reference::numbers_in(reference::rows_in("psychrometry.csv").back().at("expected"));
    REQUIRE(row_07.size() == 2);  // wet bulb and dew point
    CHECK(vapour_pressure(celsius(row_07[1] - 0.01)) < 0.5 * vapour_pressure(celsius(20)));
    CHECK(vapour_pressure(celsius(row_07[1] + 0.01)) > 0.5 * vapour_pressure(celsius(20)));
    CHECK(wet_bulb(celsius(30), 1.0).in_celsius() == Approx(30).epsilon(0).margin(1e-6));
    for (const double air : {-5.0, 10.0, 25.0, 45.0})
        for (const double humidity : {0.1, 0.5, 0.9}) {
            CAPTURE(air, humidity);
            const Temperature wet = wet_bulb(celsius(air), humidity);
            CHECK(wet < celsius(air));
            CHECK(wet < wet_bulb(celsius(air), humidity + 0.05));
        }
}

// The balance of heat in the shade is the wet bulb's own equation, told by pressures.
TEST_CASE("a wet face in the shade is as cool as a wet bulb, whatever the wind") {
    for (const double air : {5.0, 18.0, 30.0, 40.0})
        for (const double humidity : {0.2, 0.6, 0.95})
            for (const double wind : {0.0, 3.0, 10.0}) {
                CAPTURE(air, humidity, wind);
                CHECK(wet_face_temperature(weather(air, humidity, wind)).in_celsius() ==
                      Approx(wet_bulb(celsius(air), humidity).in_celsius()).epsilon(0).margin(0.03));
            }
}

// The warmer the air, the more it matters: so a face in the shade loses a third to a quarter in summer.
TEST_CASE("in the shade a face loses two and a half to four times less than one as warm as the air") {
    for (const double air : {15.0, 20.0, 25.0}) {
        CAPTURE(air);
        const double as_warm = carrier_evaporation(celsius(air), celsius(air), 0.5, 2 * metre_per_second).si();
        const double ratio = as_warm / wet_face_loss(weather(air, 0.5, 2)).si();
        CHECK(ratio > 2.4);
        CHECK(ratio < 4);
    }
}

// By hand: heat from the air and the sun is what the vapour takes along. FAO's reference crop, a wet lawn under an open
// sky, loses up to some 0.8 kg/m2 in the best hour of a hot dry summer's day (FAO paper 56, from memory).
TEST_CASE("what the sun brings goes into vapour and into air that is cooler") {
    for (const double wind : {0.5, 3.0}) {
        CAPTURE(wind);
        const Weather sunny = weather(30, 0.4, wind, 250);
        const Temperature face = wet_face_temperature(sunny);
        const double vapour = wet_face_loss(sunny).si() * latent_heat(face).si();
        // Bowen 1926 (from memory): heat over vapour is 0.61 hPa/K x (ta - tf)/(pw - pa) x p/1000 hPa, about.
        const double per_kelvin = 66 * vapour / (vapour_pressure(face) - 0.4 * vapour_pressure(celsius(30))).si();
        CHECK(250 + per_kelvin * (30 - face.in_celsius()) == Approx(vapour).epsilon(0.02));
        CHECK(3600 * wet_face_loss(sunny).si() < 0.8);
        CHECK(wet_face_loss(sunny) > wet_face_loss(weather(30, 0.4, wind)));
    }
}

TEST_CASE("damp air that is full takes nothing in the shade, and something in the sun") {
    CHECK(3600 * wet_face_loss(weather(20, 1.0, 3)).si() < 1e-9);
    CHECK(3600 * wet_face_loss(weather(20, 1.0, 3, 250)).si() > 0.05);
}

// By hand: 0.6 g/g falls at 0.1 an hour to 0.5 in an hour; from there it halves in (0.5/0.1) ln 2 hours.
TEST_CASE("a crust makes the drying slow down once the moisture is below the critical") {
    const PerTime rate = 0.1 / (1.0 * hour);
    const DryingCourse course(0.6, 0.5, rate);
    CHECK(course.left_after(0.5 * hour) == Approx(0.55));
    CHECK(course.time_to(0.5).in(hour) == Approx(1));
    CHECK(course.time_to(0.25).in(hour) == Approx(1 + 5 * std::log(2.0)));
    CHECK(course.left_after((1 + 5 * std::log(2.0)) * hour) == Approx(0.25));
    CHECK(course.time_to(0.7) == Time{});
    CHECK((course.first_rate() * (1.0 * hour)).si() == Approx(0.1));
    CHECK((DryingCourse(0.25, 0.5, rate).first_rate() * (1.0 * hour)).si() == Approx(0.05));
    CHECK(DryingCourse(0.25, 0.5, rate).time_to(0.125).in(hour) == Approx(5 * std::log(2.0)));
}

// Against small steps in time, which know nothing of the closed form.
TEST_CASE("the course of drying is that of its rate, step by step") {
    for (const double at_first : {0.9, 0.4}) {
        const DryingCourse course(at_first, 0.55, 0.07 / (1.0 * hour));
        double left = at_first;
        constexpr double step = 1e-3;
        for (int i = 1; i <= 24000; ++i) {
            left -= step * 0.07 * std::min(1.0, left / 0.55);
            if (i % 4000) continue;
            CAPTURE(at_first, i);
            CHECK(course.left_after(i * step * hour) == Approx(left).epsilon(1e-3));
            CHECK(course.time_to(left).in(hour) == Approx(i * step).epsilon(1e-3));
        }
    }
}
