#include "physics/patch.h"

#include <boost/numeric/odeint/integrate/integrate_adaptive.hpp>
#include <boost/numeric/odeint/stepper/generation.hpp>
#include <boost/numeric/odeint/stepper/runge_kutta_dopri5.hpp>
#include <catch2/catch.hpp>

#include "quantities/units.h"

using namespace baitwright;

namespace odeint = boost::numeric::odeint;

// Okubo's law of four thirds as it stands, dR^2/dt = 8 K (2 R/1 m)^(4/3), by Boost's integrator.
TEST_CASE("an even patch spreads by the law of four thirds") {
    for (const double radius : {0.02, 0.1, 0.5, 2.0})
        for (const double seconds : {1.0, 60.0, 1800.0}) {
            double square = radius * radius;
            const auto spreads = [](double s, double& change, double) {
                change = 8 * patch_stirring * std::pow(2 * std::sqrt(s), 4.0 / 3);
            };
            odeint::integrate_adaptive(odeint::make_controlled(1e-12, 1e-12, odeint::runge_kutta_dopri5<double>()),
                                       spreads, square, 0.0, seconds, 0.01);
            CHECK(spread_patch(radius * metre, seconds * second).si() == Approx(std::sqrt(square)).epsilon(1e-8));
        }
}

// Okubo 1971 (from memory): the apparent diffusivity at 1 m lies near 1e-4 m2/s, within a factor of three.
TEST_CASE("a patch a metre wide spreads at first as an even disc with that K does, by 8 K a second") {
    const double before = 0.25, after = spread_patch(0.5 * metre, 1.0 * second).si();
    CHECK(after * after - before == Approx(8 * patch_stirring).epsilon(0.01));
    CHECK(patch_stirring > 1e-4 / 3);
    CHECK(patch_stirring < 3e-4);
    CHECK(spread_patch(0.5 * metre, {}).si() == Approx(0.5));
}
