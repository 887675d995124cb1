// The engine of the page is a file beside the program: where it is looked for, and what is said of one that does not
// fit.
#include "cli/page_engine.h"

#include <catch2/catch.hpp>

#include "cli/beside_program.h"
#include "cli/program_run.h"
#include "quantities/fault.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

const std::string a_page = "<html>\n</html>\n";
const std::string whole_engine =
    "baitwright page engine 1.2.3 of " + std::to_string(a_page.size()) + " bytes\n" + a_page;

/// What is refused of a program in that folder, of version 1.2.3.
Fault refused_in(const fs::path& folder) {
    try {
        page_engine(folder / "bin" / "baitwright", "1.2.3");
    } catch (const StorageError& error) {
        CHECK(error.fault_class() == FaultClass::cannot_create);
        REQUIRE(error.faults().size() == 1);
        return error.faults().front();
    }
    FAIL("it was taken");
    return {};
}

}  // namespace

TEST_CASE("the page's engine is found beside the program, or where it is installed") {
    for (const bool installed : {false, true}) {
        const program_run::Folder here;
        const fs::path program = here.path() / "bin" / "baitwright";
        program_run::write((installed ? installed_for(program) : program.parent_path()) / page_engine_file,
                           whole_engine);
        CHECK(page_engine(program, "1.2.3") == a_page);
    }
}

TEST_CASE("the page's engine is never taken from the folder that one is in") {
    const program_run::Folder here;
    const fs::path before = fs::current_path();
    program_run::write(here.path() / page_engine_file, whole_engine);
    fs::current_path(here.path());
    CHECK_THROWS_AS(page_engine("", "1.2.3"), StorageError);
    CHECK_THROWS_AS(page_engine("baitwright", "1.2.3"), StorageError);
    fs::current_path(before);
}

TEST_CASE("a program without the page's engine says what it lacks, and where to get it") {
    const program_run::Folder here;
    const Fault fault = refused_in(here.path());
    CHECK(fault.code == "no-page-engine");
    CHECK_THAT(fault.message, Catch::Contains("baitwright-page-engine is neither beside the program nor in " +
                                              installed_for(here.path() / "bin" / "baitwright").string()));
    CHECK_THAT(fault.hint, Catch::Contains("cmake --workflow --preset page"));
}

TEST_CASE("an engine of another version, a broken one and something else are refused, each by its own words") {
    const auto told = [](const std::string& text) {
        const program_run::Folder here;
        program_run::write(here.path() / "bin" / page_engine_file, text);
        const Fault fault = refused_in(here.path());
        CHECK(fault.code == "unfit-page-engine");
        CHECK_THAT(fault.message, Catch::Contains((here.path() / "bin" / page_engine_file).string()));
        CHECK_THAT(fault.hint, Catch::Contains("Emscripten"));
        return fault.message.substr(fault.message.rfind(": ") + 2);
    };
    const std::string mark = "baitwright page engine ";
    CHECK(told(mark + "1.2.2 of 4 bytes\nabcd") == "it is of version 1.2.2, and this program of 1.2.3");
    CHECK(told(mark + "1.2.33 of 4 bytes\nabcd") == "it is of version 1.2.33, and this program of 1.2.3");
    CHECK(told(whole_engine.substr(0, whole_engine.size() - 1)) == "it is not whole");
    CHECK(told(whole_engine + "x") == "it is not whole");
    CHECK(told(mark + "1.2.3") == "it is something else");
    CHECK(told("") == "it is something else");
    CHECK(told(a_page) == "it is something else");
}
