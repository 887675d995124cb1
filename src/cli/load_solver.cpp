#include "cli/load_solver.h"

#include <dlfcn.h>

#include <filesystem>
#include <string>
#include <system_error>

#include "quantities/fault.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr const char* module_name = "baitwright_solver.so";

[[noreturn]] void refuse(std::string_view command, const std::string& why) {
    throw NotFound("no-solver", "'" + std::string(command) + "' needs the solver, and " + why,
                   "install Clp (Debian: coinor-libclp-dev), build baitwright again, and keep " + std::string(module_name) +
                       " beside the program; all other commands work without it");
}

/// Beside the program, as it was built; or where `cmake --install` puts it.
fs::path module_path(std::string_view command) {
    std::error_code unreadable;
    const fs::path program = fs::read_symlink("/proc/self/exe", unreadable).parent_path();
    for (const fs::path& folder : {program, program / BAITWRIGHT_MODULE_FOLDER}) {
        const fs::path path = folder / module_name;
        if (fs::exists(path, unreadable)) return path;
    }
    refuse(command, "its module " + std::string(module_name) + " is neither beside the program nor in " +
                        (program / BAITWRIGHT_MODULE_FOLDER).lexically_normal().string());
}

LinearSolver& solver_in(const fs::path& path, std::string_view command) {
    void* module = dlopen(path.c_str(), RTLD_NOW | RTLD_LOCAL);
    if (!module) refuse(command, "its module does not load: " + std::string(dlerror()));
    auto* const make = reinterpret_cast<LinearSolver* (*)()>(dlsym(module, linear_solver_symbol));
    if (!make) refuse(command, "its module is not of this program's version: " + path.string());
    return *make();
}

}  // namespace

LinearSolver& load_solver(std::string_view command) {
    static LinearSolver& solver = solver_in(module_path(command), command);
    return solver;
}

}  // namespace baitwright
