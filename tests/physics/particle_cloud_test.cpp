#include "physics/particle_cloud.h"

#include <rapidcheck.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <sstream>

#include "physics/bench_waters.h"
#include "physics/settling.h"
#include "quantities/fault.h"
#include "quantities/units.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

std::vector<double> numbers_of(const std::string& text) {
    std::istringstream stream(text);
    std::vector<double> numbers;
    for (double number = 0; stream >> number;) numbers.push_back(number);
    return numbers;
}

std::vector<CloudGrains> grains_of(const std::vector<double>& millilitres, const std::vector<double>& speeds,
                                   const std::vector<double>& sizes) {
    std::vector<CloudGrains> grains;
    for (std::size_t i = 0; i < speeds.size(); ++i)
        grains.push_back({millilitres[i] * millilitre, speeds[i] * metre_per_second, sizes[i] * millimetre});
    return grains;
}

TowProfile profile_of(const std::string& name) {
    return name == "lake" ? TowProfile::lake : name == "river" ? TowProfile::river : TowProfile::straight;
}

const std::vector<CloudGrains>& usual_grains() {
    static const auto grains =
        grains_of({8, 7, 6, 5, 4, 3}, {0.09, 0.06, 0.04, 0.025, 0.014, 0.006}, {4, 2, 1, 0.7, 0.4, 0.2});
    return grains;
}

CloudStart usual_start() {
    return {1.5 * second, 0.55 * metre, 40.0 * millimetre, 0.55 * metre_per_second, {}};
}

}  // namespace

// Source: tests/reference/particle_cloud.csv, SciPy's solve_ivp with events on the differential equations.
TEST_CASE("a cloud of grains sinks, loses its grains and lands them as SciPy's integrator has it, to a millionth") {
    const auto rows = reference::rows_in("particle_cloud.csv");
    CHECK(rows.size() == 41);
    for (const auto& row : rows) {
        CAPTURE(row.at("case"), row.at("grain"), row.at("source"));
        const auto number = [&](const char* key) { return std::stod(row.at(key)); };
        const CloudStart start{number("start_s") * second,
                               number("start_depth_m") * metre,
                               number("start_radius_m") * metre,
                               number("start_speed_m_s") * metre_per_second,
                               {}};
        const Tow tow{number("tow_top_m_s") * metre_per_second, number("tow_bottom_m_s") * metre_per_second,
                      number("depth_m") * metre, profile_of(row.at("tow_profile"))};
        const ParticleCloud cloud(start,
                                  grains_of(numbers_of(row.at("weights_ml")), numbers_of(row.at("settling_m_s")),
                                            numbers_of(row.at("sizes_mm"))),
                                  tow);
        const GrainsFate fate = cloud.fates().at(static_cast<std::size_t>(number("grain")));
        const auto agrees = [&](double ours, const char* key) {
            return std::abs(ours - number(key)) <= 1e-6 * std::max(1.0, std::abs(number(key)));
        };
        CHECK(fate.sinks);
        CHECK(agrees(fate.leaves.si(), "leaves_s"));
        CHECK(agrees(fate.depth.si(), "leaves_depth_m"));
        CHECK(agrees(fate.radius.si(), "leaves_radius_m"));
        CHECK(agrees(fate.lands.si(), "lands_s"));
        CHECK(agrees(fate.spread.si(), "spread_m"));
        CHECK(agrees(fate.drift.si(), "drift_m"));
    }
}

TEST_CASE("a cloud that has lost nothing yet grows by its way and keeps its momentum's books") {
    const ParticleCloud cloud(usual_start(), usual_grains(), still(2.5));
    const CloudPoint point = cloud.at_depth(0.7 * metre);
    CHECK(point.radius.in(metre) == Approx(0.04 + 0.25 * 0.15));
    const double p0 = 2 * 3.14159265 * std::pow(0.04, 3) * 0.55,
                 p = 2 * 3.14159265 * std::pow(point.radius.in(metre), 3) * point.speed.in(metre_per_second);
    CHECK(p - p0 == Approx(standard_gravity * 33e-6 * (point.at.si() - 1.5)).epsilon(1e-6));
}

TEST_CASE("the fastest leave first and land first, and the slow spread wider") {
    const ParticleCloud cloud(usual_start(), usual_grains(), still(2.5));
    for (std::size_t i = 1; i < cloud.fates().size(); ++i) {
        CHECK(cloud.fates()[i].leaves >= cloud.fates()[i - 1].leaves);
        CHECK(cloud.fates()[i].lands > cloud.fates()[i - 1].lands);
        CHECK(cloud.fates()[i].spread > cloud.fates()[i - 1].spread);
    }
}

TEST_CASE("without a tow nothing drifts; in an even tow all drifts by the time it takes") {
    const ParticleCloud stays(usual_start(), usual_grains(), still(2.5));
    for (const GrainsFate& fate : stays.fates()) CHECK(fate.drift == Length{});
    const Speed even = 0.03 * metre_per_second;
    const ParticleCloud drifts(usual_start(), usual_grains(), {even, even, 2.5 * metre});
    for (const GrainsFate& fate : drifts.fates()) CHECK(fate.drift.in(metre) == Approx(0.03 * (fate.lands.si() - 1.5)));
}

// By hand: from so high above the bed as its own time to the bed takes it, in ten thousand slices, each with the tow
// there.
TEST_CASE("what has left its cloud drifts on with the tow of every height that it falls through") {
    const Speed top = 0.2 * metre_per_second;
    for (const Tow& tow : {Tow{top, {}, 2.5 * metre, TowProfile::river}, Tow{top, {}, 2.5 * metre, TowProfile::lake},
                           Tow{top, -0.05 * metre_per_second, 2.5 * metre}}) {
        const std::vector<CloudGrains>& grains = usual_grains();
        const ParticleCloud cloud(usual_start(), grains, tow);
        for (std::size_t i = 0; i < grains.size(); ++i) {
            const GrainsFate& fate = cloud.fates()[i];
            const Time falls = fate.lands - fate.leaves;
            double drift = fate.carried.si();
            constexpr int slices = 10000;
            for (int k = 0; k < slices; ++k) {
                const Length height = (k + 0.5) / slices * falls * grains[i].settling;
                drift += (tow.at(tow.depth - height) * falls).si() / slices;
            }
            CAPTURE(i);
            CHECK(fate.drift.si() == Approx(drift).margin(1e-4));
        }
    }
}

TEST_CASE("in a river what lands later lies further down, and a faster one carries all of it further") {
    double last = 0;
    for (const double speed : {0.05, 0.1, 0.2, 0.4}) {
        const Tow river{speed * metre_per_second, {}, 1.0 * metre, TowProfile::river};
        const ParticleCloud cloud(usual_start(), usual_grains(), river);
        for (std::size_t i = 1; i < usual_grains().size(); ++i)
            CHECK(cloud.fates()[i].drift.si() > 1.01 * cloud.fates()[i - 1].drift.si());
        CHECK(cloud.fates().back().drift.si() > last);
        last = cloud.fates().back().drift.si();
    }
}

TEST_CASE("very fine grains stay in the cloud down to the bed, very coarse ones fall out of it at once") {
    const ParticleCloud cloud(usual_start(), grains_of({20, 10, 1e-6}, {5.0, 0.05, 1e-5}, {50, 2, 0.01}), still(1.0));
    CHECK(cloud.fates()[0].leaves.si() == Approx(1.5).margin(0.5));
    CHECK(cloud.fates()[0].lands < cloud.fates()[1].lands);
    CHECK(cloud.fates()[2].depth.in(metre) == Approx(1.0));
    CHECK(cloud.fates()[2].lands > 1.0 * hour);
}

TEST_CASE("what rises never lands, and takes its lift off the cloud") {
    const ParticleCloud heavy(usual_start(), grains_of({20}, {0.05}, {1.5}), still(2.0));
    const ParticleCloud lifted(usual_start(), grains_of({20, -6}, {0.05, -0.1}, {1.5, 3}), still(2.0));
    CHECK_FALSE(lifted.fates()[1].sinks);
    CHECK(lifted.at_depth(1.0 * metre).at > heavy.at_depth(1.0 * metre).at);
}

TEST_CASE("deeper water never gives a narrower patch or an earlier landing") {
    CHECK(rc::check([] {
        const double depth = *rc::gen::inRange(60, 1000) * 0.01, more = depth + *rc::gen::inRange(1, 300) * 0.01;
        const ParticleCloud cloud(usual_start(), usual_grains(), still(depth)),
            deeper(usual_start(), usual_grains(), still(more));
        for (std::size_t i = 0; i < usual_grains().size(); ++i) {
            RC_ASSERT(deeper.fates()[i].spread.si() >= cloud.fates()[i].spread.si() - 1e-12);
            RC_ASSERT(deeper.fates()[i].lands.si() > cloud.fates()[i].lands.si());
        }
    }));
}

// Bush, Thurber & Blanchette 2003: Zf/a = (11 +- 2)(sqrt(Q)/(ws a))^0.83, for grains of one size let go from rest
// (abstract read). Where the cloud is ahead of the lone grain all the way, that is where it is left.
TEST_CASE("grains of one size fall out of their cloud where Bush and others saw it") {
    int ahead = 0;
    for (const double speed : {0.01, 0.02, 0.04, 0.08}) {
        for (const double millilitres : {2.0, 20.0, 200.0}) {
            const double across = 0.5e-3, strength = std::sqrt(standard_gravity * millilitres * 1e-6);
            const CloudStart start{{}, {}, 2.0 * millimetre, {}, {}};
            const ParticleCloud cloud(start, grains_of({millilitres}, {speed}, {across * 1e3}), still(90));
            const GrainsFate fate = cloud.fates()[0];
            const double seen = 11 * (across / 2) * std::pow(strength / (speed * across / 2), 0.83);
            CHECK(fate.depth.si() <= 1.01 * seen);
            if (fate.lands.si() < 0.999 * 90 / speed) {
                ++ahead;
                CHECK(fate.depth.si() == Approx(seen).epsilon(0.02));
            }
        }
    }
    CHECK(ahead >= 6);
}

TEST_CASE("no class of any cloud lands later than it would alone") {
    CHECK(rc::check([] {
        const auto between = [](int low, int high) { return *rc::gen::inRange(low, high + 1); };
        std::vector<double> weights, speeds, sizes;
        for (int i = between(1, 12); i > 0; --i) {
            weights.push_back(between(1, 300) * 0.1);
            sizes.push_back(std::exp(between(-25, 20) * 0.1));
            speeds.push_back(0.05 * sizes.back() * between(50, 150) * 0.01);
        }
        const double depth = between(5, 100) * 0.1, from = depth * between(0, 90) * 0.01;
        const CloudStart start{between(0, 9) * second,
                               from * metre,
                               between(5, 150) * millimetre,
                               between(0, 80) * 0.01 * metre_per_second,
                               {}};
        const ParticleCloud cloud(start, grains_of(weights, speeds, sizes), still(depth));
        for (std::size_t i = 0; i < speeds.size(); ++i)
            RC_ASSERT(cloud.fates()[i].lands.si() <= start.at.si() + (depth - from) / speeds[i] + 1e-9);
    }));
}

TEST_CASE("a handful of maggots falls as each of them would") {
    const ParticleCloud cloud({{}, {}, 0.15 * metre, {}, {}}, grains_of({2.5}, {0.061}, {4.8}), still(2));
    CHECK(cloud.fates()[0].lands.si() == Approx(2 / 0.061));
}

TEST_CASE("a class split in two of the same grains changes nothing") {
    const ParticleCloud whole(usual_start(), grains_of({10, 6}, {0.06, 0.02}, {1.5, 0.6}), still(2.0));
    const ParticleCloud split(usual_start(), grains_of({4, 6, 3, 3}, {0.06, 0.06, 0.02, 0.02}, {1.5, 1.5, 0.6, 0.6}),
                              still(2.0));
    CHECK(split.fates()[0].lands.si() == Approx(whole.fates()[0].lands.si()));
    CHECK(split.fates()[2].leaves.si() == Approx(whole.fates()[1].leaves.si()).epsilon(1e-9));
}

TEST_CASE("a cloud that is none is refused") {
    CHECK_THROWS_AS(ParticleCloud({{}, 3.0 * metre, 0.1 * metre, {}, {}}, usual_grains(), still(2.0)), InputError);
    CHECK_THROWS_AS(ParticleCloud({{}, {}, {}, {}, {}}, usual_grains(), still(2.0)), InputError);
    CHECK_THROWS_AS(ParticleCloud({{}, {}, 0.1 * metre, {}, {}}, grains_of({-1}, {-0.1}, {2}), still(2.0)), InputError);
}
