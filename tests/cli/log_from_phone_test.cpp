// What comes home from a phone in one file: notes of a session, mixes that were made there, and what the shed was told.
#include <catch2/catch.hpp>
#include <fstream>

#include "cli/program_run.h"

using program_run::Folder;
using program_run::Outcome;

namespace {

constexpr const char* home_file = R"([[session]]
strategy = "open carpet"
on = 2026-11-21
length = "4 h"
page = "5d1f0c9a"
[[session.mixed]]
of = "wind mix"
dry = "500 g"
water = "300 ml"
feel = "soft"
[[session.catch]]
fish = "bream"
count = 2
[[mix]]
name = "wind mix"
feel = "soft"
[[mix.part]]
of = "brown crumb"
share = 3
[[mix.part]]
of = "maize meal"
share = 1
[[stock]]
id = "a1"
what = "buy"
of = "brown crumb"
amount = "2x1 kg"
price = "\u00a32.10"
on = 2026-11-20
[[stock]]
id = "a2"
what = "use"
of = "brown crumb"
amount = "375 g"
on = 2026-11-21
)";

constexpr const char* one_more = R"([[stock]]
id = "a3"
what = "waste"
of = "brown crumb"
amount = "125 g"
on = 2026-11-22
)";

void write_home(const Folder& here, const std::string& text) {
    std::ofstream(here.path() / "home.toml") << text;
}

Outcome taken_home(const Folder& here) {
    return program_run::run(here.path(), "log add --from home.toml");
}

bool tells(const Outcome& outcome, const std::string& words) {
    return outcome.output.find(words) != std::string::npos;
}

/// The shed's crumb in grams, as the program tells it.
std::string crumb_left(const Folder& here) {
    const std::string json = program_run::run(here.path(), "stock --json").output;
    const auto at = json.find("\"left_g\":");
    return at == std::string::npos ? "none" : json.substr(at, json.find_first_of(",}", at) - at);
}

}  // namespace

TEST_CASE("one file from the phone brings its session, its mixes and its shed, and brings them once") {
    const Folder here;
    write_home(here, home_file);
    const Outcome first = taken_home(here);
    INFO(first.output << first.errors);
    CHECK(first.status == 0);
    CHECK(tells(first, "wind mix, 500 g dry and 300 ml, soft"));
    CHECK(tells(first, "A new mix in your library: wind mix."));
    CHECK(tells(first, "In the shed, brown crumb: 2000 g in"));
    CHECK(tells(first, "In the shed, brown crumb: 375 g out; 1625 g left"));
    CHECK_FALSE(tells(first, "take it out of the shed"));
    const std::string left = crumb_left(here);

    const Outcome again = taken_home(here);
    CHECK(again.status == 0);
    CHECK(tells(again, "Already in the log"));
    CHECK(tells(again, "2 entries of the shed came before."));
    CHECK(crumb_left(here) == left);

    write_home(here, std::string(home_file) + one_more);
    const Outcome grown = taken_home(here);
    CHECK(grown.status == 0);
    CHECK(tells(grown, "brown crumb: 125 g thrown out; 1500 g left"));
    CHECK(tells(grown, "2 entries of the shed came before."));
}

TEST_CASE("what was weighed of a mix made on the phone is known by its parts") {
    const Folder here;
    write_home(here, home_file);
    CHECK(taken_home(here).status == 0);
    const Outcome shown = program_run::run(here.path(), "log show 2");
    INFO(shown.output << shown.errors);
    CHECK(tells(shown, "brown crumb, 375 g"));
    CHECK(tells(shown, "maize meal, 125 g"));
}

TEST_CASE("an entry of the shed that was taken back at home does not come again with the same file") {
    const Folder here;
    write_home(here, home_file);
    CHECK(taken_home(here).status == 0);
    CHECK(program_run::run(here.path(), "stock undo 2").status == 0);
    const std::string left = crumb_left(here);
    CHECK(taken_home(here).status == 0);
    CHECK(crumb_left(here) == left);
}

TEST_CASE("where one thing of the file cannot be entered nothing of it is, and its place is told") {
    const std::vector<std::pair<std::string, std::string>> wrong{
        {"[[stock]]\nid = \"b\"\nwhat = \"use\"\nof = \"brown crumb\"\namount = \"9 kg\"\non = 2026-11-22\n",
         "the shed holds only 1625 g of the 9000 g of brown crumb"},
        {"[[stock]]\nid = \"b\"\nwhat = \"use\"\nof = \"moon dust\"\namount = \"9 g\"\non = 2026-11-22\n",
         ":6: error: no ingredient or mix is called 'moon dust'"},
        {"[[stock]]\nid = \"b\"\nwhat = \"use\"\nof = \"brown crumb\"\namount = \"a lot\"\non = 2026-11-22\n", "a lot"},
        {"[[stock]]\nid = \"b\"\nwhat = \"eat\"\nof = \"brown crumb\"\namount = \"9 g\"\non = 2026-11-22\n", "eat"},
        {"[[stock]]\nid = \"b\"\nwhat = \"use\"\nof = \"brown crumb\"\namount = \"9 g\"\nprice = \"\u00a31\"\non = 2026-11-22\n",
         "goes with what was bought"},
        {"[[stock]]\nid = \"b\"\nwhat = \"use\"\nof = \"brown crumb\"\namount = \"9 g\"\non = 2027-11-22\n",
         "has not come yet"},
        {"[[mix]]\nname = \"no such\"\n[[mix.part]]\nof = \"moon dust\"\nshare = 1\n", "moon dust"},
    };
    for (const auto& [block, message] : wrong) {
        const Folder here;
        write_home(here, std::string(home_file) + block);
        const Outcome outcome = taken_home(here);
        INFO(block << outcome.output << outcome.errors);
        CHECK(outcome.status != 0);
        CHECK(outcome.errors.find("home.toml:") != std::string::npos);
        CHECK(outcome.errors.find(message) != std::string::npos);
        CHECK(crumb_left(here) == "none");
        CHECK(tells(program_run::run(here.path(), "log list"), "The log is empty"));
        CHECK(program_run::run(here.path(), "recipe show \"wind mix\"").status != 0);
    }
}

TEST_CASE("the mixes of a file from the phone can be had alone") {
    const Folder here;
    write_home(here, home_file);
    const Outcome outcome = program_run::run(here.path(), "recipe add home.toml");
    INFO(outcome.output << outcome.errors);
    CHECK(outcome.status == 0);
    CHECK(program_run::run(here.path(), "recipe show \"wind mix\"").status == 0);
    CHECK(crumb_left(here) == "none");
    CHECK(tells(program_run::run(here.path(), "log list"), "The log is empty"));
}

TEST_CASE("two alike entries of the shed without a mark are two, and come once each") {
    const Folder here;
    const std::string buy = "[[stock]]\nwhat = \"buy\"\nof = \"brown crumb\"\namount = \"1 kg\"\non = 2026-11-20\n";
    write_home(here, buy + buy);
    CHECK(taken_home(here).status == 0);
    const std::string left = crumb_left(here);
    CHECK(left.find("2000") != std::string::npos);
    CHECK(tells(taken_home(here), "2 entries of the shed came before."));
    CHECK(crumb_left(here) == left);
}
