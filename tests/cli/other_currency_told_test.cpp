// Every command that reckons money, of a session that is priced in two currencies: an answer in one of them, what it
// leaves out, and what to type.
#include <catch2/catch.hpp>

#include "cli/program_run.h"

namespace {

const char* const pit = R"([[strategy]]
name = "pit"
length = "2 h"
[[strategy.feed]]
every = "30 min"
of = "casters"
as = "loose"
amount = "20 g"
[[strategy.feed]]
at = "0 min"
of = "pit seeds"
as = "cup"
size = "cup 100"
[[ingredient]]
name = "pit seeds"
kind = "particle"
loose_density = "650 g/l"
[[ingredient.pack]]
size = "1 kg"
price = "€3.10"
)";

}  // namespace

TEST_CASE("whatever is asked of a session priced in two currencies is answered, and the way to one is told") {
    const program_run::Folder here;
    program_run::write(here.path() / "pit.toml", pit);
    for (const char* command : {"cost pit.toml", "compare pit.toml margin", "plan pit.toml", "shop pit.toml",
                                "card pit.toml -o sheet.pdf", "page pit.toml -o bank.html"}) {
        INFO(command);
        const program_run::Outcome outcome = program_run::run(here.path(), std::string(command) + " --json");
        // The engine of the page is made where Emscripten is installed.
        if (outcome.errors.find("needs the engine that a page carries") != std::string::npos) continue;
        CHECK(outcome.status == 1);
        CHECK(outcome.errors.empty());
        CHECK_THAT(outcome.output, Catch::Contains("\"other-currency\"") &&
                                       Catch::Contains("no price in GBP: pit seeds (€3.10)") &&
                                       Catch::Contains("baitwright price convert --to GBP --at RATE"));
    }
}

TEST_CASE("once all prices are in one currency, what was paid in the old one keeps no session from its cost") {
    const program_run::Folder here;
    for (const char* before : {"stock buy sweetcorn 1kg --price £1.15", "price convert --to EUR --at 1.17"}) {
        INFO(before);
        REQUIRE(program_run::run(here.path(), before).status == 0);
    }
    const program_run::Outcome cost = program_run::run(here.path(), "cost margin --json");
    CHECK(cost.status == 0);
    CHECK_THAT(cost.output, Catch::Contains("\"currency\": \"EUR\"") && Catch::Contains("\"paid-in-other-currency\""));
    for (const char* command : {"shop margin", "plan margin", "compare margin \"open carpet\"", "mix \"silt bed\""}) {
        INFO(command);
        CHECK(program_run::run(here.path(), command).status == 0);
    }
}
