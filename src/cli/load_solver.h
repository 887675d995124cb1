#pragma once

#include <string_view>

#include "answers/blend/linear_programme.h"

namespace baitwright {

/// The solver of linear programmes, out of the module `baitwright_solver.so`, which is loaded at the first call: from
/// beside the program, or from where it is installed. `command` is what needs it ("blend"). Throws NotFound
/// "no-solver", saying what is missing.
LinearSolver& load_solver(std::string_view command);

}  // namespace baitwright
