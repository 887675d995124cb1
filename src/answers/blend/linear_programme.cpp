#include "answers/blend/linear_programme.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace baitwright {

namespace {

bool crossed(const Bounds& bounds) {
    return bounds.lowest > bounds.highest;
}

/// Beyond it a solver may end the whole program rather than give up (Clp does, at a cost of 1e25).
constexpr double largest = 1e20;

bool is_fit(double number) {
    return std::abs(number) <= largest;
}

void check(const Bounds& bounds) {
    const auto is_fit_bound = [](double bound) { return is_fit(bound) || std::isinf(bound); };
    if (!is_fit_bound(bounds.lowest) || !is_fit_bound(bounds.highest))
        throw std::logic_error("a bound that is not a number, or beyond all use");
}

/// A programme that is wrong in itself is a mistake of ours, never a person's.
void check(const LinearProgramme& programme) {
    for (const Bounds& row : programme.rows) check(row);
    for (const LinearColumn& column : programme.columns) {
        check(column.bounds);
        if (!is_fit(column.cost)) throw std::logic_error("a cost that is not a number, or beyond all use");
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
