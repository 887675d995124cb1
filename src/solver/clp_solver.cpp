#include "solver/clp_solver.h"

#include <ClpSimplex.hpp>
#include <CoinPackedMatrix.hpp>
#include <algorithm>

namespace baitwright {

namespace {

/// Tighter than Clp's own 1e-7, since shares are told to a hundredth of a percent and prices to a fraction of a penny.
constexpr double tolerance = 1e-9;

/// The programme column by column, as Clp takes it in.
struct Arrays {
    std::vector<CoinBigIndex> starts;
    std::vector<int> rows;
    std::vector<double> coefficients, costs, lowest, highest, row_lowest, row_highest;
};

double for_clp(double bound) {
    return std::clamp(bound, -COIN_DBL_MAX, COIN_DBL_MAX);
}

Arrays arrays_of(const LinearProgramme& programme) {
    Arrays arrays;
    arrays.starts.push_back(0);
    for (const LinearColumn& column : programme.columns) {
        for (const LinearEntry& entry : column.entries) {
            arrays.rows.push_back(static_cast<int>(entry.row));
            arrays.coefficients.push_back(entry.coefficient);
        }
        arrays.starts.push_back(static_cast<CoinBigIndex>(arrays.rows.size()));
        arrays.costs.push_back(column.cost);
        arrays.lowest.push_back(for_clp(column.bounds.lowest));
        arrays.highest.push_back(for_clp(column.bounds.highest));
    }
    for (const Bounds& row : programme.rows) {
        arrays.row_lowest.push_back(for_clp(row.lowest));
        arrays.row_highest.push_back(for_clp(row.highest));
    }
    return arrays;
}

LinearStatus status_of(const ClpSimplex& model) {
    switch (model.status()) {
        case 0:
            return LinearStatus::optimal;
        case 1:
            return LinearStatus::infeasible;
        case 2:
            return LinearStatus::unbounded;
        default:
            return LinearStatus::failed;
    }
}

void solve_by_clp(const LinearProgramme& programme, LinearSolution& solution) {
    const Arrays arrays = arrays_of(programme);
    const int columns = static_cast<int>(programme.columns.size()), rows = static_cast<int>(programme.rows.size());
    ClpSimplex model;
    model.setLogLevel(0);
    model.setPrimalTolerance(tolerance);
    model.setDualTolerance(tolerance);
    model.loadProblem(columns, rows, arrays.starts.data(), arrays.rows.data(), arrays.coefficients.data(),
                      arrays.lowest.data(), arrays.highest.data(), arrays.costs.data(), arrays.row_lowest.data(),
                      arrays.row_highest.data());
    model.setOptimizationDirection(1);
    model.dual();
    solution.status = status_of(model);
    if (solution.status != LinearStatus::optimal) return;
    solution.cost = model.objectiveValue();
    std::copy_n(model.getColSolution(), columns, solution.values.begin());
    std::copy_n(model.getReducedCost(), columns, solution.reduced_costs.begin());
    std::copy_n(model.getRowPrice(), rows, solution.row_prices.begin());
}

}  // namespace

void ClpSolver::fill(const LinearProgramme& programme, LinearSolution& solution) noexcept {
    try {
        solve_by_clp(programme, solution);
    } catch (...) {  // Clp throws errors of its own, which the program cannot know
        solution.status = LinearStatus::failed;
    }
}

}  // namespace baitwright
