#include "solver/clp_solver.h"
#include "drawn_number.h"

#include <rapidcheck.h>
#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <stdexcept>

namespace baitwright {

namespace {

LinearSolution solved(const LinearProgramme& programme) {
    ClpSolver solver;
    return solver.solve(programme);
}

/// x + y >= 2 at 3 and 1 a unit, y at most 1.5.
LinearProgramme two_columns() {
    return {{{3, {}, {{0, 1}}}, {1, {0, 1.5}, {{0, 1}}}}, {{2, without_limit}}};
}

/// Costs above 0 and rows of mixed signs: sometimes infeasible, never unbounded.
LinearProgramme random_programme() {
    LinearProgramme programme;
    const int rows = between(1, 6), columns = between(1, 10);
    for (int r = 0; r < rows; ++r) {
        const double lowest = between(-20, 20);
        programme.rows.push_back({lowest, between(0, 1) ? without_limit : lowest + between(0, 10)});
    }
    for (int c = 0; c < columns; ++c) {
        LinearColumn column{double(between(1, 50)), {0, between(0, 2) ? without_limit : between(0, 9)}, {}};
        for (int r = 0; r < rows; ++r)
            if (const int a = between(-9, 9)) column.entries.push_back({std::size_t(r), double(a)});
        programme.columns.push_back(column);
    }
    return programme;
}

std::vector<double> row_sums(const LinearProgramme& programme, const LinearSolution& solution) {
    std::vector<double> sums(programme.rows.size(), 0);
    for (std::size_t c = 0; c < programme.columns.size(); ++c)
        for (const LinearEntry& entry : programme.columns[c].entries)
            sums[entry.row] += entry.coefficient * solution.values[c];
    return sums;
}

/// Of a price, the bound that it is a price of: the lower one above 0, the upper one below.
double priced(double price, const Bounds& bounds) {
    if (std::abs(price) < 1e-9) return 0;
    return price * (price > 0 ? bounds.lowest : bounds.highest);
}

}  // namespace

TEST_CASE("the cheaper column is filled to its bound before the dearer") {
    const LinearSolution solution = solved(two_columns());
    REQUIRE(solution.status == LinearStatus::optimal);
    CHECK(solution.values[0] == Approx(0.5));
    CHECK(solution.values[1] == Approx(1.5));
    CHECK(solution.cost == Approx(3.0));
    CHECK(solution.row_prices[0] == Approx(3.0));      // one more must be of the dearer
    CHECK(solution.reduced_costs[1] == Approx(-2.0));  // one more of the cheaper saves that
    CHECK(solution.reduced_costs[0] == Approx(0.0).margin(1e-12));
}

TEST_CASE("what cannot be and what never ends is told") {
    LinearProgramme programme = two_columns();
    programme.columns[0].bounds.highest = 0.25;
    CHECK(solved(programme).status == LinearStatus::infeasible);
    programme = two_columns();
    programme.columns[0].cost = -1;
    CHECK(solved(programme).status == LinearStatus::unbounded);
}

TEST_CASE("bounds that cross are infeasible") {
    LinearProgramme programme = two_columns();
    programme.columns[1].bounds = {2, 1};
    CHECK(solved(programme).status == LinearStatus::infeasible);
    programme = two_columns();
    programme.rows[0] = {3, 2};
    CHECK(solved(programme).status == LinearStatus::infeasible);
}

TEST_CASE("numbers out of all proportion are given up, and told so") {
    LinearProgramme programme = two_columns();
    programme.columns[0].entries[0].coefficient = 1e300;
    CHECK(solved(programme).status == LinearStatus::failed);
}

TEST_CASE("an empty programme costs nothing") {
    const LinearSolution solution = solved({});
    CHECK(solution.status == LinearStatus::optimal);
    CHECK(solution.cost == 0);
}

TEST_CASE("a programme that is wrong in itself is a mistake of ours") {
    LinearProgramme programme = two_columns();
    programme.columns[0].entries[0].row = 1;
    CHECK_THROWS_AS(solved(programme), std::logic_error);
    programme = two_columns();
    programme.columns[0].cost = std::numeric_limits<double>::quiet_NaN();
    CHECK_THROWS_AS(solved(programme), std::logic_error);
    programme = two_columns();
    programme.rows[0].lowest = std::numeric_limits<double>::quiet_NaN();
    CHECK_THROWS_AS(solved(programme), std::logic_error);
    // Clp ends the whole program at a cost of 1e25 or a bound of 1e100.
    programme = two_columns();
    programme.columns[0].cost = 1e26;
    CHECK_THROWS_AS(solved(programme), std::logic_error);
    programme = two_columns();
    programme.rows[0].lowest = 1e101;
    CHECK_THROWS_AS(solved(programme), std::logic_error);
}

// Optimal values keep every bound, and the prices of the bounds add up to the same cost: strong duality proves both.
// Source: Dantzig 1963, chapter 6 (from memory).
TEST_CASE("an optimum keeps every bound and its prices add up to its cost") {
    CHECK(rc::check([] {
        const LinearProgramme programme = random_programme();
        const LinearSolution solution = solved(programme);
        if (solution.status != LinearStatus::optimal) {
            RC_ASSERT(solution.status == LinearStatus::infeasible);
            return;
        }
        const std::vector<double> sums = row_sums(programme, solution);
        double cost = 0, dual_cost = 0;
        for (std::size_t r = 0; r < sums.size(); ++r) {
            RC_ASSERT(sums[r] >= programme.rows[r].lowest - 1e-6);
            RC_ASSERT(sums[r] <= programme.rows[r].highest + 1e-6);
            dual_cost += priced(solution.row_prices[r], programme.rows[r]);
        }
        for (std::size_t c = 0; c < programme.columns.size(); ++c) {
            const LinearColumn& column = programme.columns[c];
            RC_ASSERT(solution.values[c] >= column.bounds.lowest - 1e-7);
            RC_ASSERT(solution.values[c] <= column.bounds.highest + 1e-7);
            double priced_column = solution.reduced_costs[c];
            for (const LinearEntry& entry : column.entries)
                priced_column += entry.coefficient * solution.row_prices[entry.row];
            RC_ASSERT(std::abs(priced_column - column.cost) < 1e-6);
            cost += column.cost * solution.values[c];
            dual_cost += priced(solution.reduced_costs[c], column.bounds);
        }
        RC_ASSERT(std::abs(cost - solution.cost) < 1e-6 * (1 + std::abs(cost)));
        RC_ASSERT(std::abs(dual_cost - cost) < 1e-6 * (1 + std::abs(cost)));
    }));
}

}  // namespace baitwright
