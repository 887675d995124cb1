#include "physics/evaporation.h"

#include <catch2/catch.hpp>

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
// degC air at 60 %.
TEST_CASE("an open face loses water as Carrier's form has it") {
    CHECK(kilograms_an_hour(25, 25, 0.5, 0) == Approx(row("EVAPORATION-02")).epsilon(1e-3));
    CHECK(kilograms_an_hour(25, 25, 0.5, 0.5) == Approx(row("EVAPORATION-03")).epsilon(1e-3));
    CHECK(kilograms_an_hour(25, 25, 0.5, 2) == Approx(row("EVAPORATION-04")).epsilon(1e-3));
    CHECK(kilograms_an_hour(15, 20, 0.6, 2) == Approx(row("EVAPORATION-07")).epsilon(1e-3));
}

// Source: the same file, row 06: natural convection by Shah 2014, within 5 %.
TEST_CASE("in still air it loses less than half of that") {
    CHECK(still_air_share * kilograms_an_hour(25, 25, 0.5, 0) == Approx(row("EVAPORATION-06")).epsilon(0.05));
}

TEST_CASE("air that is damper than the water's face takes nothing") {
    CHECK(kilograms_an_hour(5, 25, 1.0, 3) == 0);
}
