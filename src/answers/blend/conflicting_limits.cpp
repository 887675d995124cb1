#include <cmath>
#include <numeric>

#include "answers/blend/blend_programme.h"

namespace baitwright {

namespace {

using Place = PlacedLimit::Place;
using End = BlendLimitEnd::End;
using Chosen = std::vector<std::size_t>;

constexpr double least_strain = 1e-7;

/// The bound that the limit sets, of a programme's row or column.
double& bound_of(LinearProgramme& programme, const PlacedLimit& limit) {
    Bounds& bounds = limit.place == Place::row ? programme.rows[limit.at] : programme.columns[limit.at].bounds;
    return limit.limit.end == End::least ? bounds.lowest : bounds.highest;
}

void lift(LinearProgramme& programme, const PlacedLimit& limit) {
    double& bound = bound_of(programme, limit);
    if (limit.limit.end == End::most)
        bound = without_limit;
    else
        bound = limit.place == Place::column ? 0 : -without_limit;
}

bool can_hold(const BlendProgramme& blend, const Chosen& chosen, LinearSolver& solver) {
    LinearProgramme programme = blend.programme;
    std::vector<bool> kept(blend.limits.size(), false);
    for (const std::size_t i : chosen) kept[i] = true;
    for (std::size_t i = 0; i < kept.size(); ++i)
        if (!kept[i]) lift(programme, blend.limits[i]);
    return solver.solve(programme).status == LinearStatus::optimal;
}

/// Each limit as a row that may give way at a cost of 1 a unit; the least strain names those that strain against each
/// other.
Chosen strained(const BlendProgramme& blend, LinearSolver& solver) {
    LinearProgramme elastic = blend.programme;
    for (LinearColumn& column : elastic.columns) column.cost = 0;
    std::vector<std::size_t> rows;
    for (const PlacedLimit& limit : blend.limits) {
        std::size_t row = limit.at;
        if (limit.place == Place::column) {
            const double bound = limit.limit.bound;
            row = elastic.rows.size();
            elastic.rows.push_back(limit.limit.end == End::least ? Bounds{bound, without_limit}
                                                                 : Bounds{-without_limit, bound});
            elastic.columns[limit.at].entries.push_back({row, 1});
            lift(elastic, limit);
        }
        elastic.columns.push_back({1, {}, {{row, limit.limit.end == End::least ? 1.0 : -1.0}}});
        rows.push_back(row);
    }
    const LinearSolution solution = solver.solve(elastic);
    Chosen chosen;
    for (std::size_t i = 0; i < rows.size(); ++i)
        if (std::abs(solution.row_prices[rows[i]]) > least_strain) chosen.push_back(i);
    return chosen;
}

}  // namespace

std::vector<std::size_t> conflicting_limits(const BlendProgramme& blend, LinearSolver& solver) {
    Chosen chosen = strained(blend, solver);
    if (can_hold(blend, chosen, solver)) {  // the strain was too small to be told from rounding
        chosen.resize(blend.limits.size());
        std::iota(chosen.begin(), chosen.end(), 0);
    }
    for (std::size_t i = 0; i < chosen.size();) {
        Chosen without = chosen;
        without.erase(without.begin() + static_cast<std::ptrdiff_t>(i));
        if (can_hold(blend, without, solver))
            ++i;
        else
            chosen = std::move(without);
    }
    return chosen;
}

}  // namespace baitwright
