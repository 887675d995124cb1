#include "answers/linear_programme.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace baitwright {

namespace {

bool crossed(const Bounds& bounds) {
    return bounds.lowest > bounds.highest;
}

void check(const Bounds& bounds) {
    if (std::isnan(bounds.lowest) || std::isnan(bounds.highest)) throw std::logic_error("a bound that is not a number");
}

/// A programme that is wrong in itself is a mistake of ours, never a person's.
void check(const LinearProgramme& programme) {
    for (const Bounds& row : programme.rows) check(row);
    for (const LinearColumn& column : programme.columns) {
        check(column.bounds);
        if (!std::isfinite(column.cost)) throw std::logic_error("a cost that is not a number");
        for (const LinearEntry& entry : column.entries)
            if (entry.row >= programme.rows.size() || !std::isfinite(entry.coefficient))
                throw std::logic_error("an entry outside the rows, or not a number");
    }
}

}  // namespace

LinearSolution LinearSolver::solve(const LinearProgramme& programme) {
    check(programme);
    LinearSolution solution;
    solution.values.assign(programme.columns.size(), 0);
    solution.reduced_costs.assign(programme.columns.size(), 0);
    solution.row_prices.assign(programme.rows.size(), 0);
    const bool crossing = std::any_of(programme.rows.begin(), programme.rows.end(), crossed) ||
                          std::any_of(programme.columns.begin(), programme.columns.end(),
                                      [](const LinearColumn& column) { return crossed(column.bounds); });
    if (crossing)
        solution.status = LinearStatus::infeasible;
    else
        fill(programme, solution);
    return solution;
}

}  // namespace baitwright
