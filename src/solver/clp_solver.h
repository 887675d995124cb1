#pragma once

#include "answers/blend/linear_programme.h"

namespace baitwright {

/// The simplex method of COIN-OR Clp. **Test**: `tests/solver/`, published optima and what other solvers find.
class ClpSolver : public LinearSolver {
private:
    void fill(const LinearProgramme& programme, LinearSolution& solution) noexcept override;
};

}  // namespace baitwright
