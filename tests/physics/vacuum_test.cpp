#include "physics/vacuum.h"

#include <catch2/catch.hpp>

#include "physics/water.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

// Source: tests/reference/vacuum.csv (Fito 1994, Boyle; Dalton for the vapour).
TEST_CASE("water fills the pores that the air has left, as Boyle and Fito have it") {
    int tested = 0;
    for (const auto& row : reference::rows_in("vacuum.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const bool vapour = row.at("id").find("VAPOUR") != std::string::npos;
        const auto in = numbers_in(row.at("inputs"));
        const double reached = in.at(1);  // "p1=5": the digit of the name comes first
        const Pressure pressed = vapour ? vapour_pressure(Temperature::from_celsius(20)) : Pressure{};
        CHECK(pore_fill(reached * kilopascal, standard_air_pressure, pressed) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-5));
        ++tested;
    }
    CHECK(tested == 6);
}

// Boyle: each stroke of a pump as large as the free volume halves the pressure.
TEST_CASE("each stroke divides the pressure by the same factor, down to the water's vapour") {
    const Pressure air = 100.0 * kilopascal, vapour = 2.34 * kilopascal;
    const Volume each = 60.0 * millilitre;
    CHECK(pressure_after(0, each, each, air, vapour) == air);
    CHECK(pressure_after(1, each, each, air, vapour).in(kilopascal) == Approx(50));
    CHECK(pressure_after(5, each, each, air, vapour).in(kilopascal) == Approx(3.125));
    CHECK(pressure_after(6, each, each, air, vapour) == vapour);
    CHECK(pressure_after(500, each, each, air, vapour) == vapour);
    CHECK(strokes_to_boil(each, each, air, vapour) == Approx(5.4175).epsilon(1e-4));
}

TEST_CASE("at the water's vapour pressure the pores fill up, and unpumped they stay empty") {
    const Pressure air = standard_air_pressure, vapour = vapour_pressure(Temperature::from_celsius(12));
    CHECK(pore_fill(vapour, air, vapour) == 1.0);
    CHECK(pore_fill(air, air, vapour) == 0.0);
}
