#pragma once

#include <cstddef>
#include <limits>
#include <vector>

/// A linear programme: of all plans within limits, the one that costs least. What solves it is loaded when it is needed
/// (`src/solver/`), so nothing here knows of it. All numbers are pure: whoever makes a programme says what they stand
/// for.
namespace baitwright {

inline constexpr double without_limit = std::numeric_limits<double>::infinity();

/// From lowest to highest, both allowed. Crossed bounds hold nothing.
struct Bounds {
    double lowest = 0;
    double highest = without_limit;
};

/// A place in a row, from 0, and the number there.
struct LinearEntry {
    std::size_t row;
    double coefficient;
};

/// One unknown: what a unit of it costs, between which bounds it lies, and how it enters the rows.
struct LinearColumn {
    double cost = 0;
    Bounds bounds;
    std::vector<LinearEntry> entries;
};

/// Least sum of cost x value, with each row's sum of coefficient x value within that row's bounds.
struct LinearProgramme {
    std::vector<LinearColumn> columns;
    std::vector<Bounds> rows;
};

enum class LinearStatus {
    optimal,
    infeasible,  ///< no values keep every bound
    unbounded,   ///< whatever it costs, there is something cheaper
    failed,      ///< the solver gave up
};

/// All vectors are as long as the programme's, and mean something where the status is `optimal`.
struct LinearSolution {
    LinearStatus status = LinearStatus::failed;
    double cost = 0;
    std::vector<double> values;  ///< of the columns
    std::vector<double>
        row_prices;  ///< what one unit more of the bound that a row lies at costs; 0 where it lies at none
    std::vector<double> reduced_costs;  ///< the same for the bounds of the columns
};

/// Something that solves linear programmes.
class LinearSolver {
public:
    LinearSolver() = default;
    LinearSolver(const LinearSolver&) = delete;
    LinearSolver& operator=(const LinearSolver&) = delete;
    virtual ~LinearSolver() = default;

    /// Bounds that cross are infeasible without further ado. Throws std::logic_error for an entry outside the rows and
    /// for a number that is not one.
    [[nodiscard]] LinearSolution solve(const LinearProgramme& programme);

private:
    /// Fills in a solution whose vectors have their length already: no memory changes hands between a solver that was
    /// loaded and the program. Must not throw.
    virtual void fill(const LinearProgramme& programme, LinearSolution& solution) noexcept = 0;
};

/// What a solver that is loaded is looked up by: a function without arguments that returns a `LinearSolver*` which
/// lives as long as the program. The number rises with every change above.
inline constexpr const char* linear_solver_symbol = "baitwright_linear_solver_1";

}  // namespace baitwright
