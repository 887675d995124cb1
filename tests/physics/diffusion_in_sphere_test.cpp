#include "physics/diffusion_in_sphere.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <numbers>

#include "quantities/fault.h"
#include "quantities/units.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

// Source: tests/reference/crank_sphere.csv, rows 01 to 12.
TEST_CASE("the uptake of a sphere agrees with Crank's series to the digits printed") {
    int tested = 0;
    for (const auto& row : reference::rows_in("crank_sphere.csv")) {
        if (row.at("unit") != "Mt/Minf" || row.at("id") == "CRANK_SPHERE-25") continue;
        CAPTURE(row.at("id"), row.at("source"));
        CHECK(sphere_uptake(numbers_in(row.at("inputs")).back()) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-6));
        ++tested;
    }
    CHECK(tested == 9);
}

// Source: tests/reference/crank_sphere.csv, rows 19 to 23.
TEST_CASE("the Fourier number of an uptake agrees with the root of Crank's series") {
    int tested = 0;
    for (const auto& row : reference::rows_in("crank_sphere.csv")) {
        if (row.at("unit") != "-") continue;
        CAPTURE(row.at("id"), row.at("source"));
        CHECK(fourier_number_of_uptake(numbers_in(row.at("inputs")).front()) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-6));
        ++tested;
    }
    CHECK(tested == 5);
}

// Source: tests/reference/soak_time.csv: minutes to half and to nine tenths of saturation.
TEST_CASE("soak times of spheres agree with Crank's series and grow with the square of the diameter") {
    for (const auto& row : reference::rows_in("soak_time.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const auto in = numbers_in(row.at("inputs")), expected = numbers_in(row.at("expected"));
        const Length radius = 0.5 * in.at(0) * millimetre;
        const Diffusivity diffusivity = in.at(1) * square_metre_per_second;
        const auto minutes = [&](double share) {
            return (fourier_number_of_uptake(share) * (radius * radius / diffusivity)).in(minute);
        };
        CHECK(minutes(0.5) == Approx(expected.at(0)).epsilon(1e-4));
        CHECK(minutes(0.9) == Approx(expected.at(1)).epsilon(1e-4));
    }
}

// Crank 1975, eq. 6.22 (from memory): at short times the uptake is 6 sqrt(Fo/pi), less 3 Fo.
TEST_CASE("at short times the uptake grows with the square root of time") {
    for (const double fourier : {1e-12, 1e-9, 1e-6}) {
        CAPTURE(fourier);
        CHECK(sphere_uptake(fourier) / std::sqrt(fourier) ==
              Approx(6 / std::sqrt(std::numbers::pi)).epsilon(1e-15 + std::sqrt(fourier)));
    }
}

// Source: tests/reference/crank_sphere.csv, row 25.
TEST_CASE("at Fo = 0.1 the two-term form for short times is still right to a hundred-thousandth") {
    for (const auto& row : reference::rows_in("crank_sphere.csv")) {
        if (row.at("id") != "CRANK_SPHERE-25") continue;
        const double short_form = std::stod(row.at("expected"));  // the row gives the exact value beside it
        CHECK(6 * std::sqrt(0.1 / std::numbers::pi) - 3 * 0.1 == Approx(short_form).epsilon(0).margin(1e-6));
        CHECK(sphere_uptake(0.1) == Approx(numbers_in(row.at("inputs")).back()).epsilon(0).margin(1e-6));
    }
}

// Crank 1975, eq. 6.20 (from memory): at long times the first term alone is left, 1 - (6/pi^2) exp(-pi^2 Fo).
TEST_CASE("at long times what is missing dies away by one exponential") {
    constexpr double square = std::numbers::pi * std::numbers::pi;
    for (const double fourier : {1.0, 1.5, 2.0}) {
        CAPTURE(fourier);
        CHECK((1 - sphere_uptake(fourier)) == Approx(6 / square * std::exp(-square * fourier)).epsilon(1e-6));
    }
    CHECK(sphere_uptake(50.0) == 1.0);
    CHECK(sphere_uptake(0.0) == 0.0);
    CHECK(sphere_uptake(-1.0) == 0.0);
}

TEST_CASE("both series meet where one takes over from the other") {
    const double below = sphere_uptake(std::nextafter(0.01, 0.0)), above = sphere_uptake(0.01);
    CHECK(above == Approx(below).epsilon(1e-14));
}

TEST_CASE("more time never means less uptake") {
    CHECK(rc::check([] {
        const double early = *rc::gen::inRange(0, 2000000) * 1e-6, more = *rc::gen::inRange(1, 1000) * 1e-6;
        RC_ASSERT(sphere_uptake(early) < sphere_uptake(early + more) || sphere_uptake(early) > 1 - 1e-8);
    }));
}

TEST_CASE("asking the time of an uptake gives it back") {
    CHECK(rc::check([] {
        const double share = *rc::gen::inRange(1, 1000000) * 1e-6;
        RC_ASSERT(std::abs(sphere_uptake(fourier_number_of_uptake(share)) - share) < 1e-12);
    }));
    for (const double share : {1e-9, 1e-6, 0.9999999})
        CHECK(sphere_uptake(fourier_number_of_uptake(share)) == Approx(share).epsilon(1e-9));
}

TEST_CASE("full saturation takes endless time, and none takes none") {
    CHECK(fourier_number_of_uptake(0.0) == 0.0);
    CHECK(fourier_number_of_uptake(-0.5) == 0.0);
    CHECK_THROWS_AS(fourier_number_of_uptake(1.0), InputError);
    CHECK_THROWS_AS(fourier_number_of_uptake(std::numeric_limits<double>::quiet_NaN()), InputError);
}

// Source: tests/reference/arrhenius.csv, the same equation on both sides: a check of coding.
TEST_CASE("diffusion speeds up with warmth as Arrhenius has it") {
    for (const auto& row : reference::rows_in("arrhenius.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const auto in = numbers_in(row.at("inputs"));
        const MolarEnergy energy = in.at(0) * kilojoule_per_mole;
        CHECK(arrhenius_factor(energy, Temperature::from_celsius(in.at(1))) /
                  arrhenius_factor(energy, Temperature::from_celsius(in.at(2))) ==
              Approx(std::stod(row.at("expected"))).epsilon(0).margin(1e-5));
    }
}

TEST_CASE("at 15 degC nothing is faster or slower") {
    CHECK(arrhenius_factor(35.0 * kilojoule_per_mole, Temperature::from_celsius(15)) == 1.0);
    CHECK(arrhenius_factor(0.0 * kilojoule_per_mole, Temperature::from_celsius(3)) == 1.0);
}
