#include "physics/vacuum.h"

#include <catch2/catch.hpp>
#include <cmath>

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

// Boyle and Dalton by hand: each stroke of a pump as large as the air halves what is there above the vapour, for water
// evaporates on; with dry air alone 5 strokes would leave 100/32 = 3.125 kPa.
TEST_CASE("each stroke thins the air by the same factor, and the vapour stays") {
    const Pressure air = 100.0 * kilopascal, vapour = 2.0 * kilopascal;
    const Volume each = 60.0 * millilitre;
    CHECK(pressure_after(0, each, each, air, vapour).in(kilopascal) == Approx(100));
    CHECK(pressure_after(1, each, each, air, vapour).in(kilopascal) == Approx(51));
    CHECK(pressure_after(5, each, each, air, vapour).in(kilopascal) == Approx(2 + 98 / 32.0));
    CHECK(pressure_after(5, each, each, air, Pressure{}).in(kilopascal) == Approx(3.125));
    CHECK(pressure_after(500, each, each, air, vapour).in(kilopascal) == Approx(2));
}

// Stroke by stroke, by hand: let the air widen into the pump, throw out what the pump holds, let vapour make up for it.
TEST_CASE("counted out stroke by stroke, in moles of air, the pressure is the same") {
    const double air_volume = 317, stroke = 100, outside = 101.325, vapour = 1.7;
    double air = (outside - vapour) * air_volume;  // pressure times volume: its moles
    for (int n = 1; n <= 30; ++n) {
        air -= air / (air_volume + stroke) * stroke;
        CAPTURE(n);
        CHECK(pressure_after(n, stroke * millilitre, air_volume * millilitre, outside * kilopascal, vapour * kilopascal)
                  .in(kilopascal) == Approx(air / air_volume + vapour));
    }
}

TEST_CASE("more strokes always draw more air, and never all of it") {
    const Pressure air = standard_air_pressure, vapour = vapour_pressure(Temperature::from_celsius(15));
    double before = 0;
    for (int n = 1; n <= 60; ++n) {
        const Pressure reached = pressure_after(n, 100.0 * millilitre, 317.0 * millilitre, air, vapour);
        const double fill = pore_fill(reached, air, vapour);
        CHECK(fill == Approx(1 - std::pow(317.0 / 417.0, n)));
        CHECK(fill > before);
        CHECK(fill < 1);
        CHECK(reached > vapour);
        before = fill;
    }
}

TEST_CASE("at the water's vapour pressure the pores fill up, and unpumped they stay empty") {
    const Pressure air = standard_air_pressure, vapour = vapour_pressure(Temperature::from_celsius(12));
    CHECK(pore_fill(vapour, air, vapour) == 1.0);
    CHECK(pore_fill(air, air, vapour) == 0.0);
}
