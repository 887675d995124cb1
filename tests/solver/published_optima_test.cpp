// Linear programmes whose optimum is printed elsewhere: tests/reference/linear_optima.csv says where.
#include <catch2/catch.hpp>

#include "reference/numbers_in.h"
#include "solver/clp_solver.h"
#include "solver/reference_programmes.h"

namespace baitwright {

namespace {

using reference::NamedProgramme;

LinearSolution solved_by_clp(const LinearProgramme& programme) {
    ClpSolver solver;
    return solver.solve(programme);
}

double at(const NamedProgramme& named, const LinearSolution& solution, const std::string& column) {
    return solution.values.at(named.columns.at(column));
}

/// The feed of LP-09: limestone, corn, soybean meal.
LinearProgramme feed_mix() {
    return {{{10.0, {}, {{0, 1}, {1, 0.38}}},
             {30.5, {}, {{0, 1}, {1, 0.001}, {2, 0.09}, {3, 0.02}}},
             {90.0, {}, {{0, 1}, {1, 0.002}, {2, 0.50}, {3, 0.08}}}},
            {{1, 1}, {0.008, 0.012}, {0.22, without_limit}, {-without_limit, 0.05}}};
}

}  // namespace

TEST_CASE("the cheapest of Stigler's diets costs what is printed and is the basket that is printed") {
    const NamedProgramme named = reference::programme_called("stigler");
    REQUIRE(named.programme.columns.size() == 77);
    const LinearSolution solution = solved_by_clp(named.programme);
    REQUIRE(solution.status == LinearStatus::optimal);
    CHECK(solution.cost == Approx(std::stod(reference::expected_of("LP-01"))).margin(1e-9).epsilon(0));
    CHECK(365.25 * solution.cost < std::stod(reference::expected_of("LP-04")));  // Stigler's own was dearer
    const std::vector<double> basket = reference::numbers_in(reference::expected_of("LP-03"));
    REQUIRE(basket.size() == 5);
    const char* foods[] = {"x[flour]", "x[liver]", "x[cabbage]", "x[spinach]", "x[navybeans]"};
    double sum = 0;
    for (std::size_t i = 0; i < basket.size(); ++i) {
        CHECK(365.25 * at(named, solution, foods[i]) == Approx(basket[i]).margin(0.005));
        sum += at(named, solution, foods[i]);
    }
    CHECK(sum == Approx(solution.cost));
}

TEST_CASE("diets, alloys, ice cream and the plan cost what is printed") {
    const auto cost = [](const char* name) {
        const LinearSolution solution = solved_by_clp(reference::programme_called(name).programme);
        REQUIRE(solution.status == LinearStatus::optimal);
        return solution.cost;
    };
    CHECK(cost("diet") == Approx(std::stod(reference::expected_of("LP-05"))).margin(1e-9).epsilon(0));
    CHECK(cost("icecream") == Approx(std::stod(reference::expected_of("LP-06"))).margin(1e-6).epsilon(0));
    CHECK(cost("alloy") == Approx(std::stod(reference::expected_of("LP-07"))).margin(1e-5).epsilon(0));
    CHECK(cost("plan") == Approx(std::stod(reference::expected_of("LP-08"))).margin(1e-6).epsilon(0));
}

TEST_CASE("the plan melts what is printed") {
    const NamedProgramme named = reference::programme_called("plan");
    const LinearSolution solution = solved_by_clp(named.programme);
    CHECK(at(named, solution, "bin2") == Approx(665.343).margin(5e-4));
    CHECK(at(named, solution, "bin3") == Approx(490.253).margin(5e-4));
    CHECK(at(named, solution, "bin4") == Approx(424.188).margin(5e-4));
    CHECK(at(named, solution, "alum") == Approx(299.639).margin(5e-4));
    CHECK(at(named, solution, "silicon") == Approx(120.578).margin(5e-4));
}

TEST_CASE("the feed of a textbook is mixed as another solver mixes it") {
    const std::vector<double> expected = reference::numbers_in(reference::expected_of("LP-09"));
    const LinearSolution solution = solved_by_clp(feed_mix());
    REQUIRE(solution.status == LinearStatus::optimal);
    REQUIRE(expected.size() == 4);
    for (std::size_t i = 0; i < 3; ++i) CHECK(solution.values[i] == Approx(expected[i]).margin(1e-6));
    CHECK(solution.cost == Approx(expected[3]).margin(1e-5));
}

TEST_CASE("sacks of soya and oats are bought at the corner that the fractions name") {
    const LinearProgramme sacks{{{21, {}, {{0, 70}, {1, 9}, {2, 7}}}, {7, {}, {{0, 21}, {1, 7}, {2, 1}}}},
                                {{168, without_limit}, {27, without_limit}, {14, without_limit}}};
    const LinearSolution solution = solved_by_clp(sacks);
    CHECK(solution.values[0] == Approx(87.0 / 43));
    CHECK(solution.values[1] == Approx(54.0 / 43));
    CHECK(solution.cost == Approx(51.27907).margin(1e-5));
}

}  // namespace baitwright
