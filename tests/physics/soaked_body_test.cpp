#include "physics/soaked_body.h"

#include <rapidcheck.h>

#include <boost/math/quadrature/gauss.hpp>
#include <catch2/catch.hpp>
#include <cmath>

#include "physics/diffusion_in_sphere.h"
#include "quantities/fault.h"
#include "reference/numbers_in.h"
#include "reference/reference_rows.h"

using namespace baitwright;
using reference::numbers_in;

namespace {

BodyShape shape_called(const std::string& name) {
    return name == "sheet" ? BodyShape::sheet : name == "cylinder" ? BodyShape::cylinder : BodyShape::sphere;
}

double number(const reference::Row& row, const char* key) {
    return std::stod(row.at(key));
}

}  // namespace

// Source: tests/reference/crank_series.csv, Crank's series for sphere, cylinder and sheet.
TEST_CASE("what a body takes up under water agrees with Crank's series to ten digits") {
    for (const auto& row : reference::rows_in("crank_series.csv")) {
        CAPTURE(row.at("shape"), row.at("fourier"), row.at("source"));
        const double fourier = number(row, "fourier"), expected = number(row, "taken_up");
        CHECK(std::abs(1 - SoakedBody(shape_called(row.at("shape")), fourier).missing_mean() - expected) < 1e-10);
        CHECK(std::abs(1 - missing_after_soak(shape_called(row.at("shape")), fourier) - expected) < 1e-10);
        if (row.at("shape") == "sphere") CHECK(std::abs(sphere_uptake(fourier) - expected) < 1e-10);
    }
}

// Source: tests/reference/soaked_body.csv, SciPy's solve_ivp on the diffusion equation itself.
TEST_CASE("soaked and drained bodies agree with SciPy's integrator to a millionth") {
    int tested = 0;
    for (const auto& row : reference::rows_in("soaked_body.csv")) {
        CAPTURE(row.at("shape"), row.at("fourier"), row.at("drained"), row.at("source"));
        const SoakedBody body(shape_called(row.at("shape")), number(row, "fourier"));
        const double drained = number(row, "drained");
        CHECK(std::abs(1 - body.missing_mean() - number(row, "mean")) < 1e-6);
        CHECK(std::abs(1 - body.missing_core(drained) - number(row, "core")) < 1e-6);
        CHECK(std::abs(1 - body.missing_surface(drained) - number(row, "surface")) < 1e-6);
        ++tested;
    }
    CHECK(tested == 60);
}

// Source: tests/reference/crank_sphere.csv, row 17: polykin's profile_sphere, at Dt/a^2 = 0.25.
TEST_CASE("the core under water agrees with the published profile of a sphere") {
    for (const auto& row : reference::rows_in("crank_sphere.csv"))
        if (row.at("id") == "CRANK_SPHERE-17")
            CHECK(std::abs(1 - SoakedBody(BodyShape::sphere, 0.25).missing_core(0) - std::stod(row.at("expected"))) <
                  1e-12);
}

// Source: tests/reference/crank_cylinder_sheet.csv.
TEST_CASE("cylinder and sheet agree with the rows of Crank's equations 5.23 and 4.18") {
    for (const auto& row : reference::rows_in("crank_cylinder_sheet.csv")) {
        CAPTURE(row.at("id"), row.at("source"));
        const double fourier = numbers_in(row.at("inputs")).front();
        const auto expected = numbers_in(row.at("expected"));
        CHECK(std::abs(1 - SoakedBody(BodyShape::cylinder, fourier).missing_mean() - expected.at(0)) < 1e-6);
        CHECK(std::abs(1 - SoakedBody(BodyShape::sheet, fourier).missing_mean() - expected.at(1)) < 1e-6);
    }
}

// Zeros of J0 and J1: Abramowitz & Stegun 1964, table 9.5; tan x = x: table 4.19 (both from memory).
TEST_CASE("the eigenvalues are the tabled ones") {
    CHECK(held_eigenvalue(BodyShape::cylinder, 1) == Approx(2.4048255576957728).epsilon(1e-14));
    CHECK(held_eigenvalue(BodyShape::cylinder, 5) == Approx(14.930917708487786).epsilon(1e-14));
    CHECK(closed_eigenvalue(BodyShape::cylinder, 1) == Approx(3.8317059702075123).epsilon(1e-14));
    CHECK(closed_eigenvalue(BodyShape::sphere, 1) == Approx(4.493409457909064).epsilon(1e-14));
    CHECK(closed_eigenvalue(BodyShape::sphere, 2) == Approx(7.725251836937707).epsilon(1e-14));
}

TEST_CASE("every eigenvalue solves its equation, the hundredth too") {
    for (const int m : {1, 2, 15, 16, 17, 32, 33, 100}) {
        CAPTURE(m);
        const double mu = closed_eigenvalue(BodyShape::sphere, m);
        CHECK(std::abs(std::sin(mu) - mu * std::cos(mu)) < 1e-12 * mu);
        CHECK(std::abs(std::cyl_bessel_j(0, held_eigenvalue(BodyShape::cylinder, m))) < 1e-13);
        CHECK(std::abs(std::cyl_bessel_j(1, closed_eigenvalue(BodyShape::cylinder, m))) < 1e-13);
    }
}

// The mean over the body by Gauss and Legendre's rule of 60 points (Boost.Math), which knows nothing of the series.
TEST_CASE("draining moves water and loses none: the profile always holds what was soaked up") {
    for (const BodyShape shape : {BodyShape::sheet, BodyShape::cylinder, BodyShape::sphere}) {
        const SoakedBody body(shape, 0.0181);
        const double dimensions = shape == BodyShape::sheet ? 1 : shape == BodyShape::cylinder ? 2 : 3;
        for (const double drained : {0.003, 0.02, 0.1, 0.5}) {
            CAPTURE(dimensions, drained);
            const double mean = boost::math::quadrature::gauss<double, 60>::integrate(
                [&](double r) { return dimensions * std::pow(r, dimensions - 1) * body.missing_inside(r, drained); },
                0.0, 1.0);
            CHECK(std::abs(mean - body.missing_mean()) < 1e-12);
            CHECK(std::abs(body.missing_inside(0.0, drained) - body.missing_core(drained)) < 1e-12);
            CHECK(std::abs(body.missing_inside(1.0, drained) - body.missing_surface(drained)) < 1e-12);
        }
    }
}

TEST_CASE("after a long stand all has evened out to the mean") {
    for (const BodyShape shape : {BodyShape::sheet, BodyShape::cylinder, BodyShape::sphere}) {
        const SoakedBody body(shape, 0.0181);
        CHECK(std::abs(body.missing_core(8) - body.missing_mean()) < 1e-12);
        CHECK(std::abs(body.missing_surface(8) - body.missing_mean()) < 1e-12);
    }
}

TEST_CASE("as it comes out of the water the surface is full and the core by Crank's profile") {
    for (const BodyShape shape : {BodyShape::sheet, BodyShape::cylinder, BodyShape::sphere}) {
        const SoakedBody body(shape, 0.05);
        CHECK(body.missing_surface(0) == 0.0);
        CHECK(body.missing_core(1e-9) == body.missing_core(0));
        CHECK(body.missing_core(1e-6) == Approx(double(body.missing_core(0))).margin(1e-5));
        // At short times the surface dries with the square root of time.
        CHECK(body.missing_surface(1e-9) / body.missing_surface(1e-7) == Approx(0.1).epsilon(0.01));
    }
}

TEST_CASE("a surface only dries and a core only wets while it stands") {
    CHECK(rc::check([] {
        const auto shape = *rc::gen::element(BodyShape::sheet, BodyShape::cylinder, BodyShape::sphere);
        const SoakedBody body(shape, *rc::gen::inRange(1, 4000) * 1e-4);
        const double early = *rc::gen::inRange(1, 5000) * 1e-4, later = early + *rc::gen::inRange(1, 1000) * 1e-4;
        RC_ASSERT(body.missing_surface(later) >= body.missing_surface(early) - 1e-12);
        RC_ASSERT(body.missing_core(later) <= body.missing_core(early) + 1e-12);
        RC_ASSERT(body.missing_surface(later) <= body.missing_core(later) + 1e-12);
    }));
}

TEST_CASE("a soak too short for the series is refused") {
    CHECK_THROWS_AS(SoakedBody(BodyShape::sphere, 1e-7), InputError);
    CHECK_THROWS_AS(SoakedBody(BodyShape::sphere, std::nan("")), InputError);
}
