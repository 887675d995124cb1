#include "physics/water.h"

#include <catch2/catch.hpp>

#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

namespace {

Temperature first_temperature(const reference::Row& row) {
    return Temperature::from_celsius(numbers_in(row.at("inputs")).front());
}

}  // namespace

// Source: tests/reference/water_density.csv (IAPWS-95, Tanaka 2001, Kell 1975).
TEST_CASE("water weighs what the standards say") {
    int tested = 0;
    for (const auto& row : reference::rows_in("water_density.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const bool tanaka = row.at("inputs").find("Tanaka") != std::string::npos;
        const double density = water_density(first_temperature(row)).si();
        CHECK(density == Approx(std::stod(row.at("expected"))).epsilon(0).margin(tanaka ? 1e-4 : 5e-3));
        ++tested;
    }
    CHECK(tested == 10);
}

// Source: tests/reference/vapour_pressure.csv (ASHRAE, IAPWS, and a page on vacuum coating of fish feed).
TEST_CASE("water's vapour presses as the steam tables say") {
    int tested = 0;
    for (const auto& row : reference::rows_in("vapour_pressure.csv")) {
        if (row.at("unit") != "Pa") continue;
        CAPTURE(row.at("id"), row.at("source"));
        const bool antoine = row.at("inputs").find("Antoine") != std::string::npos;  // 0.4 % below at 20 degC
        CHECK(vapour_pressure(first_temperature(row)).si() ==
              Approx(std::stod(row.at("expected"))).epsilon(antoine ? 5e-3 : 3e-4));
        ++tested;
    }
    CHECK(tested == 8);
}

// The same file's boiling points: at the tabled temperature the vapour presses as hard as the pump leaves.
TEST_CASE("under a pump water boils where the tables say") {
    int tested = 0;
    for (const auto& row : reference::rows_in("vapour_pressure.csv")) {
        if (row.at("unit") != "C") continue;
        CAPTURE(row.at("id"), row.at("source"));
        const bool millibar = row.at("inputs").find("mbar") != std::string::npos;
        const double pressure = numbers_in(row.at("inputs")).front() * (millibar ? 100 : 1000);
        const double kelvins = std::stod(row.at("expected")), off = millibar ? 0.1 : 0.02;
        CHECK(vapour_pressure(Temperature::from_celsius(kelvins - off)).si() < pressure);
        CHECK(vapour_pressure(Temperature::from_celsius(kelvins + off)).si() > pressure);
        ++tested;
    }
    CHECK(tested == 4);
}
