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

double row(const std::string& id) {
    for (const auto& r : reference::rows_in("evaporation.csv"))
        if (r.at("id") == id) return std::stod(r.at("expected"));
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
