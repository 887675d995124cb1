// The solver costs time to load, so only the commands that need it load it. The dynamic linker says what is loaded.
#include <catch2/catch.hpp>

#include <cstdlib>

#include "cli/program_run.h"

namespace {

namespace fs = std::filesystem;

struct Run {
    program_run::Outcome outcome;
    bool loads_solver = false;
};

/// Types a line with LD_DEBUG=files (ld.so(8)); each process writes a file of its own.
Run watched(const std::string& line) {
    const program_run::Folder here;
    setenv("LD_DEBUG", "files", 1);
    setenv("LD_DEBUG_OUTPUT", (here.path() / "loaded").c_str(), 1);
    Run run{program_run::run(here.path(), line)};
    unsetenv("LD_DEBUG");
    unsetenv("LD_DEBUG_OUTPUT");
    bool program_seen = false;
    for (const auto& entry : fs::directory_iterator(here.path())) {
        if (entry.path().filename().string().rfind("loaded.", 0) != 0) continue;
        const std::string text = program_run::whole_file(entry.path());
        program_seen = program_seen || text.find("baitwright") != std::string::npos;
        run.loads_solver = run.loads_solver || text.find("baitwright_solver.so") != std::string::npos ||
                           text.find("libClp") != std::string::npos;
    }
    REQUIRE(program_seen);
    return run;
}

}  // namespace

TEST_CASE("blend and swap load the solver") {
    for (const char* line : {"blend \"club sack\"", "swap \"silt bed\" --without \"brown crumb\""}) {
        const Run run = watched(line);
        INFO(line << ": " << run.outcome.errors);
        CHECK(run.outcome.status == 0);
        CHECK(run.loads_solver);
    }
}

TEST_CASE("no other command loads the solver") {
    for (const char* line : {"--help",
                             "--version",
                             "blend --help",
                             "mix \"silt bed\" --wet-volume 3l",
                             "water \"silt bed\" --dry-mass 1kg --added 500ml",
                             "soak \"fishmeal micro pellet 2 mm\" --amount 2pt",
                             "drop \"silt bed\" --depth 2.5m --ball 55mm",
                             "dry \"silt bed\" --tub 40x30cm --hours 5",
                             "cost \"open carpet\"",
                             "compare \"open carpet\" \"tight balls\"",
                             "shop \"open carpet\"",
                             "plan \"open carpet\"",
                             "advise --season winter",
                             "venue list",
                             "ingredient list",
                             "ingredient show \"brown crumb\"",
                             "recipe list",
                             "recipe show \"silt bed\"",
                             "strategy list",
                             "price list",
                             "stock"}) {
        const Run run = watched(line);
        INFO(line << ": " << run.outcome.errors);
        CHECK(run.outcome.status == 0);
        CHECK_FALSE(run.loads_solver);
    }
}
