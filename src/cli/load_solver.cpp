#include "cli/load_solver.h"

#include "cli/load_module.h"

namespace baitwright {

namespace {

constexpr Module solver{"baitwright_solver.so", linear_solver_symbol, "no-solver", "the solver",
                        "Clp (Debian: coinor-libclp-dev)"};

}  // namespace

LinearSolver& load_solver(std::string_view command) {
    static LinearSolver& loaded = *static_cast<LinearSolver*>(load_module(solver, command));
    return loaded;
}

}  // namespace baitwright
