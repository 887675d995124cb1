// The one door of the module: what the program looks up once it has loaded it (`linear_solver_symbol`).
#include "solver/clp_solver.h"

extern "C" baitwright::LinearSolver* baitwright_linear_solver_1() {
    static baitwright::ClpSolver solver;
    return &solver;
}
