#include "answers/blend/closest_match.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>

#include "drawn_number.h"
#include "solver/clp_solver.h"

namespace baitwright {

namespace {

std::vector<MatchPart> random_parts(int count, int aspects) {
    std::vector<MatchPart> parts;
    for (int i = 0; i < count; ++i) {
        MatchPart part{{0, 1}, {}};
        for (int k = 0; k < aspects; ++k) part.differences.push_back(between(-40, 40) / 4.0);
        parts.push_back(part);
    }
    return parts;
}

double distance(const std::vector<MatchPart>& parts, const std::vector<double>& shares) {
    double sum = 0;
    for (std::size_t k = 0; k < parts.front().differences.size(); ++k) {
        double away = 0;
        for (std::size_t i = 0; i < parts.size(); ++i) away += shares[i] * parts[i].differences[k];
        sum += std::abs(away);
    }
    return sum;
}

}  // namespace

// By hand: one part is 2 steps above, the other 6 below; three to one they meet.
TEST_CASE("two parts on either side meet the original between them") {
    ClpSolver solver;
    const Match match = closest_match({{{0, 1}, {2}}, {{0, 1}, {-6}}}, solver);
    REQUIRE(match.found);
    CHECK(match.distance == Approx(0).margin(1e-9));
    CHECK(match.shares[0] == Approx(0.75));
    CHECK(match.shares[1] == Approx(0.25));
}

TEST_CASE("no mix of three parts on a fine grid comes closer") {
    CHECK(rc::check([] {
        ClpSolver solver;
        const std::vector<MatchPart> parts = random_parts(3, 4);
        const Match match = closest_match(parts, solver);
        RC_ASSERT(match.found);
        RC_ASSERT(std::abs(distance(parts, match.shares) - match.distance) < 1e-6);
        double best = 1e300;
        for (int a = 0; a <= 60; ++a)
            for (int b = 0; a + b <= 60; ++b)
                best = std::min(best, distance(parts, {a / 60.0, b / 60.0, (60 - a - b) / 60.0}));
        RC_ASSERT(match.distance <= best + 1e-6);
        RC_ASSERT(best <= match.distance + 4 * 20 / 60.0);  // the grid is that fine
    }));
}

TEST_CASE("a single stand-in is the closest of all") {
    CHECK(rc::check([] {
        ClpSolver solver;
        const std::vector<MatchPart> parts = random_parts(between(1, 15), 3);
        const Match match = closest_with_few(parts, 0, 1, solver);
        double best = 1e300;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            std::vector<double> alone(parts.size(), 0);
            alone[i] = 1;
            best = std::min(best, distance(parts, alone));
        }
        RC_ASSERT(std::abs(match.distance - best) < 1e-6);
    }));
}

TEST_CASE("two stand-ins are the closest pair, where that is half a step closer than one") {
    CHECK(rc::check([] {
        ClpSolver solver;
        const std::vector<MatchPart> parts = random_parts(6, 3);
        const double alone = closest_with_few(parts, 0, 1, solver).distance;
        double best = 1e300;
        for (std::size_t i = 0; i < parts.size(); ++i)
            for (std::size_t j = i + 1; j < parts.size(); ++j)
                best = std::min(best, closest_match({parts[i], parts[j]}, solver).distance);
        const double two = closest_with_few(parts, 0, 2, solver).distance;
        if (std::abs(best - (alone - 0.5)) < 1e-6) return;  // either is right
        RC_ASSERT(std::abs(two - (best < alone - 0.5 ? best : alone)) < 1e-6);
    }));
}

TEST_CASE("the parts that stay keep within their bounds") {
    ClpSolver solver;
    const Match match = closest_with_few({{{0.6, 0.6}, {0}}, {{0, 1}, {3}}, {{0, 1}, {-1}}}, 1, 2, solver);
    CHECK(match.shares[0] == Approx(0.6));
    CHECK(match.shares[0] + match.shares[1] + match.shares[2] == Approx(1));
}

}  // namespace baitwright
