// Where a mix that is put by lies: in the cold unless it is said to be frozen, whether that is said or not.
#include <catch2/catch.hpp>

#include "cli/program_run.h"

using program_run::run;

TEST_CASE("a mix is put by in the cold, said or not, and frozen where that is said") {
    const program_run::Folder unsaid, said, frozen;
    const auto kept = run(unsaid.path(), R"(stock keep "silt bed" 800g)");
    REQUIRE(kept.status == 0);
    CHECK(kept.output.find("cold") != std::string::npos);
    CHECK(run(said.path(), R"(stock keep "silt bed" 800g --cold)").output == kept.output);
    const auto in_freezer = run(frozen.path(), R"(stock keep "silt bed" 800g --frozen)");
    REQUIRE(in_freezer.status == 0);
    CHECK(in_freezer.output.find("frozen") != std::string::npos);
}
