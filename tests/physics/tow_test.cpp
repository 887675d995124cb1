#include "physics/tow.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <cstdint>

#include "quantities/units.h"

using namespace baitwright;

namespace {

Tow tow_in(TowProfile profile, double top = 0.1, double bottom = 0.03, double depth = 3) {
    return {top * metre_per_second, bottom * metre_per_second, depth * metre, profile};
}

/// The mean of the speed between two depths by ten thousand slices.
double sliced(const Tow& tow, double from, double to) {
    constexpr int slices = 10000;
    double sum = 0;
    for (int i = 0; i < slices; ++i) sum += tow.at((from + (to - from) * (i + 0.5) / slices) * metre).si();
    return sum / slices;
}

}  // namespace

TEST_CASE("the mean of a tow between two depths is that of its slices") {
    for (const TowProfile profile : {TowProfile::straight, TowProfile::lake, TowProfile::river})
        for (const double from : {0.0, 0.7, 2.5})
            for (const double to : {0.8, 2.6, 3.0}) {
                if (to <= from) continue;
                const Tow tow = tow_in(profile);
                CHECK(tow.mean_between(from * metre, to * metre).si() == Approx(sliced(tow, from, to)).margin(2e-5));
            }
}

TEST_CASE("a closed lake carries no water away on the whole, runs back below and stands at the bed") {
    for (const double top : {0.02, -0.08}) {
        const Tow tow = tow_in(TowProfile::lake, top);
        CHECK(tow.at({}).si() == Approx(top));
        CHECK(tow.mean_below({}).si() == Approx(0).margin(1e-15));
        CHECK(tow.at(3.0 * metre).si() == Approx(0).margin(1e-15));
        CHECK(tow.at(2.0 * metre).si() * top < 0);
        CHECK(tow.at(1.0 * metre).si() == Approx(0).margin(1e-15));
    }
}

TEST_CASE("a river slows towards the bed and never runs back") {
    const Tow tow = tow_in(TowProfile::river);
    CHECK(tow.at({}).si() == Approx(0.1));
    double last = 1;
    for (int i = 0; i <= 300; ++i) {
        const double here = tow.at(i * 0.01 * metre).si();
        CHECK(here >= 0);
        CHECK(here <= last);
        last = here;
    }
    CHECK(tow.at(3.0 * metre) == Speed{});
    // By hand: at half the depth 1 - ln 2/ln 600.
    CHECK(tow.at(1.5 * metre).si() == Approx(0.1 * (1 - std::log(2.0) / std::log(600.0))));
}

TEST_CASE("still water is still") {
    CHECK(Tow{{}, {}, 2.0 * metre, TowProfile::lake}.still());
    CHECK_FALSE(tow_in(TowProfile::river).still());
    CHECK_FALSE(Tow{{}, 0.01 * metre_per_second, 2.0 * metre}.still());
}
