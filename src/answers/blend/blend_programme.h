#pragma once

#include <vector>

#include "answers/blend/blend_answer.h"
#include "answers/blend/linear_programme.h"
#include "answers/blend/resolved_blend.h"

namespace baitwright {

/// A limit and where it stands in the programme: a row, or the bound of a column.
struct PlacedLimit {
    BlendLimitEnd limit;
    enum class Place { row, column } place = Place::row;
    std::size_t at = 0;
    std::vector<double>
        weights;  ///< of the columns: raising the bound by d takes d x sum(weight x value) of a row; empty for a column
};

/// A blend as a linear programme. Its columns are the candidates, in kilograms in a kilogram of the mix; or in a litre
/// of it, where that is to cost least. Row 0 says that they fill it. A property is a quotient of sums, so a limit b on
/// it reads sum(value x (amount - b x weight)) >= 0 (or <= 0), which holds for a kilogram and for a litre alike.
/// **Source**: Charnes & Cooper 1962, programming with linear fractional functionals (from memory). **Test**:
/// `tests/answers/blend_mix_test.cpp`.
struct BlendProgramme {
    LinearProgramme programme;
    std::vector<PlacedLimit> limits;
};

BlendProgramme programme_of(const ResolvedBlend& blend);

/// What a unit more of the limit's bound costs at that solution (below 0: saves).
double price_of_bound(const PlacedLimit& limit, const LinearSolution& solution);

/// Of the limits, those that cannot hold together, such that any of them away the rest can: what an elastic programme
/// strains at, thinned out one by one. The programme must be infeasible.
/// **Source**: Chinneck & Dravnieks 1991, deletion and elastic filters (from memory). **Test**:
/// `tests/answers/conflicting_limits_test.cpp`.
std::vector<std::size_t> conflicting_limits(const BlendProgramme& blend, LinearSolver& solver);

}  // namespace baitwright
