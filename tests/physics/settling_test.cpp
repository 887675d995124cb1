#include "physics/settling.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>

#include "physics/bench_waters.h"
#include "physics/water.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

namespace {

double expected(const reference::Row& row) {
    return std::stod(row.at("expected"));
}

}  // namespace

// Source: tests/reference/water_viscosity.csv (IAPWS R12-08, Kestin et al. 1978, a rounded table).
TEST_CASE("water is as thick as the standards say") {
    int tested = 0;
    for (const auto& row : reference::rows_in("water_viscosity.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const auto in = numbers_in(row.at("inputs"));
        if (row.at("unit") == "uPa s") {
            const double micro =
                1e6 * water_viscosity(Temperature::from_kelvin(in.at(0)), Density::from_si(in.at(1))).si();
            CHECK(micro == Approx(expected(row)).epsilon(1e-6));
        } else {
            const double tolerance = numbers_in(row.at("tolerance")).front() / 100;
            CHECK(1e3 * water_viscosity(Temperature::from_celsius(in.at(0))).si() ==
                  Approx(expected(row)).epsilon(tolerance));
        }
        ++tested;
    }
    CHECK(tested == 15);
}

// Source: tests/reference/surface_tension.csv: IAPWS R1-76, the same equation on both sides, a check of coding; and the
// handbook's value at 20 degC, which no equation made.
TEST_CASE("water's skin pulls as the standard and the handbook say") {
    for (const auto& row : reference::rows_in("surface_tension.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const double milli =
            1e3 * surface_tension(Temperature::from_celsius(numbers_in(row.at("inputs")).front())).si();
        CHECK(milli == Approx(expected(row)).epsilon(0).margin(numbers_in(row.at("tolerance")).front()));
    }
}

// Source: tests/reference/drag.csv: python3-fluids for the equation, a list of experiments with smooth spheres, within
// 8 %.
TEST_CASE("a sphere's drag is Haider and Levenspiel's, and close to what was measured") {
    int equations = 0, measured = 0;
    for (const auto& row : reference::rows_in("drag.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const bool table = row.at("id").find("TABLE") != std::string::npos;
        const double drag = haider_levenspiel_drag(numbers_in(row.at("inputs")).front());
        CHECK(drag == Approx(expected(row)).epsilon(table ? 0.08 : 1e-10));
        ++(table ? measured : equations);
    }
    CHECK(equations == 2);
    CHECK(measured == 7);
}

// Source: tests/reference/terminal_speed.csv: the mean of three drag laws, each within 1.5 % of it.
TEST_CASE("spheres sink as fast as three drag laws say, within 2 %") {
    int tested = 0;
    for (const auto& row : reference::rows_in("terminal_speed.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const auto in = numbers_in(row.at("inputs"));
        CHECK(terminal_speed(in.at(0) * millimetre, Density::from_si(in.at(1)), bench_water()).si() ==
              Approx(expected(row)).epsilon(0.02));
        ++tested;
    }
    CHECK(tested == 8);
}

// Source: tests/reference/ferguson_church.csv. The rows have g = 9.81; only the product R g counts. The same equation
// on both sides.
TEST_CASE("grains settle as Ferguson and Church have it: a check of coding") {
    int tested = 0;
    const StillWater water(Density::from_si(1000), Viscosity::from_si(1.004e-3));
    for (const auto& row : reference::rows_in("ferguson_church.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const double micrometres = numbers_in(row.at("inputs")).front();
        CHECK(ferguson_church_speed(1e-3 * micrometres * millimetre, 1.65 * 9.81 / standard_gravity, water).si() ==
              Approx(expected(row)).epsilon(0).margin(1e-5));
        ++tested;
    }
    CHECK(tested == 5);
}

TEST_CASE("what is lighter than the water rises, what is as heavy hangs") {
    CHECK(terminal_speed(5.0 * millimetre, Density::from_si(900), bench_water()) < Speed{});
    CHECK(terminal_speed(5.0 * millimetre, bench_water().density, bench_water()) == Speed{});
    CHECK(ferguson_church_speed(1.0 * millimetre, -0.1, bench_water()).si() ==
          Approx(-ferguson_church_speed(1.0 * millimetre, 0.1, bench_water()).si()));
}

TEST_CASE("bigger and heavier bodies sink faster, and rounder ones too") {
    CHECK(rc::check([] {
        const double d = *rc::gen::inRange(1, 500) * 1e-4, excess = *rc::gen::inRange(1, 1000);
        const auto speed = [&](double size, double more, double roundness) {
            return terminal_speed(Length::from_si(size), Density::from_si(998.207 + more), bench_water(), roundness)
                .si();
        };
        RC_ASSERT(speed(1.1 * d, excess, 1) > speed(d, excess, 1));
        RC_ASSERT(speed(d, 1.1 * excess, 1) > speed(d, excess, 1));
        RC_ASSERT(speed(d, excess, 0.87) < speed(d, excess, 0.95));
    }));
}
