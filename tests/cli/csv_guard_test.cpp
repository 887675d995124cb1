// Every table that leaves the program as CSV, out of a library whose every name would be run by a spreadsheet.
#include <catch2/catch.hpp>
#include <map>
#include <sstream>

#include "cli/command.h"
#include "cli/program_run.h"
#include "files/csv.h"
#include "files/formula_guard.h"

namespace {

using baitwright::all_commands;
using baitwright::CommandSpec;
using baitwright::CsvRow;
using baitwright::Flag;
using program_run::Folder;
using program_run::Outcome;

constexpr const char* hostile_library = R"toml(
[[ingredient]]
name = "=HYPERLINK(1)"
kind = "base"
loose_density = "420 g/l"
absorption = "0.65 g/g"
colour = "=1+1"
note = "@SUM(1)"
pack = [{ size = "1 kg", price = "£2.10", on = 2026-03-01, shop = "@shop" }]
[[ingredient]]
name = "@meal"
kind = "base"
loose_density = "500 g/l"
absorption = "0.7 g/g"
pack = [{ size = "1 kg", price = "£4.20", on = 2026-03-01, shop = "+shop" }]
[[ingredient]]
name = "+liquid"
kind = "liquid"
density = "1.3 g/ml"
water = "30 %"
label_dose = "25 ml per kg dry"
pack = [{ size = "1 l", price = "£5.00", on = 2026-03-01 }]
[[ingredient]]
name = "@pellet"
kind = "pellet"
diameter = "2 mm"
length = "2.4 mm"
loose_density = "650 g/l"
absorption = "0.6 g/g"
pack = [{ size = "900 g", price = "£3.10", on = 2026-03-01 }]
[[ingredient]]
name = "=nobody sells it"
kind = "base"
loose_density = "420 g/l"
absorption = "0.65 g/g"
[[mix]]
name = "=bed"
feel = "firm"
purpose = "=2+2"
why = "+why"
part = [{ of = "=HYPERLINK(1)", share = 1 }, { of = "@meal", share = 1 }, { of = "=nobody sells it", share = 1 }]
dose = [{ of = "+liquid", amount = "20 ml per kg dry" }]
[[strategy]]
name = "@day"
length = "3 h"
purpose = "-purpose"
[[strategy.feed]]
at = "0 min"
of = "=bed"
as = "cup"
size = "250 ml"
count = 3
[[strategy.feed]]
every = "60 min"
of = "@pellet"
as = "cup"
size = "60 ml"
[[strategy]]
name = "+night"
length = "2 h"
[[strategy.feed]]
at = "0 min"
of = "@pellet"
as = "cup"
size = "60 ml"
)toml";

/// What is typed of each command that has --csv.
const std::map<std::string, std::string> typed{
    {"mix", "mix '=bed' --wet-volume 3l"},
    {"dose", "dose '=bed' --amount 1kg"},
    {"drop", "drop '=bed' --depth 2m --cup 250ml"},
    {"soak", "soak '@pellet' --amount 200g"},
    {"cost", "cost '@day'"},
    {"compare", "compare '@day' '+night'"},
    {"shop", "shop '@day=2' --empty-shed"},
    {"swap", "swap '=bed' --without '@meal'"},
    {"blend", "blend ./spec.toml"},
    {"stock", "stock"},
    {"stock buy", "stock buy '=HYPERLINK(1)' 20kg"},
    {"stock count", "stock count '=HYPERLINK(1)' 2kg"},
    {"stock use", "stock use '=HYPERLINK(1)' 100g"},
    {"stock waste", "stock waste '=HYPERLINK(1)' 100g"},
    {"stock keep", "stock keep '=bed' 500g"},
    {"stock undo", "stock undo"},
    {"stock session", "stock session '@day'"},
    {"stock history", "stock history '=HYPERLINK(1)'"},
    {"price", "price '=HYPERLINK(1)' --pack 1kg --is £2.20 --shop '@shop'"},
    {"price list", "price list"},
    {"price history", "price history '=HYPERLINK(1)'"},
    {"find", "find meal"},
    {"price convert", "price convert --to EUR --at 1.17"},
    {"ingredient list", "ingredient list"},
    {"ingredient export", "ingredient export"},
    {"recipe list", "recipe list"},
    {"strategy list", "strategy list"},
    {"log list", "log list"},
    {"learn", "learn"},
    {"paid", "paid"},
};

constexpr const char* hostile_spec = R"toml(
name = "=blend"
feel = "firm"
goal = "cost per kg"
batch = "5 kg"
[[candidate]]
of = "=HYPERLINK(1)"
[[candidate]]
of = "@meal"
min = "20 %"
)toml";

bool is_number(const std::string& cell) {
    char* end = nullptr;
    std::strtod(cell.c_str(), &end);
    return cell.front() != '+' && end == cell.c_str() + cell.size();
}

/// A spreadsheet would run it. Told apart here by what a spreadsheet does, not by our own guard.
bool runs(const std::string& cell) {
    const auto first = cell.find_first_not_of(' ');
    return first != std::string::npos && std::string("=+-@\t\r\n").find(cell[first]) != std::string::npos &&
           !is_number(cell);
}

std::vector<std::string> commands_with_csv() {
    std::vector<std::string> found;
    for (const CommandSpec& command : all_commands())
        for (const Flag& flag : command.flags)
            if (flag.name == "--csv") found.emplace_back(command.verb);
    return found;
}

void lay_hostile_library(const Folder& here) {
    program_run::write(here.path() / "hostile.toml", hostile_library);
    program_run::write(here.path() / "spec.toml", hostile_spec);
    for (const char* line :
         {"ingredient import hostile.toml", "recipe add hostile.toml", "strategy add hostile.toml",
          "stock count '=HYPERLINK(1)' 9kg", "stock count '@meal' 9kg", "stock count '=nobody sells it' 9kg",
          "stock count '+liquid' 9kg", "stock count '@pellet' 9kg", "stock use '=HYPERLINK(1)' 50g",
          "log add --planned '@day' --note '=1+1' --caught '+bream=2 1kg' --water '=bed=200ml'",
          "log mix '=bed' --dry 1kg --water 500ml --feel firm"}) {
        const Outcome outcome = program_run::run(here.path(), line);
        INFO(line << "\n" << outcome.errors);
        CHECK(outcome.status == 0);
    }
}

}  // namespace

TEST_CASE("no table that any command writes holds a cell that a spreadsheet would run") {
    const Folder here;
    lay_hostile_library(here);
    const std::vector<std::string> commands = commands_with_csv();
    CHECK(commands.size() == typed.size());
    int guarded_cells = 0;
    for (const std::string& command : commands) {
        INFO(command);
        REQUIRE(typed.count(command) == 1);  // a new command with --csv is to be typed here as well
        const Outcome outcome = program_run::run(here.path(), typed.at(command) + " --csv");
        INFO(outcome.errors);
        CHECK(outcome.status <= 1);
        const std::vector<CsvRow> rows = baitwright::read_csv(outcome.output);
        REQUIRE(rows.size() >= 2);
        for (const CsvRow& row : rows) {
            CHECK(row.cells.size() == rows.front().cells.size());
            for (const std::string& cell : row.cells) {
                INFO(cell);
                CHECK_FALSE(runs(cell));
                guarded_cells += baitwright::unguarded(cell) != cell ? 1 : 0;
            }
        }
    }
    CHECK(guarded_cells > 40);
}

TEST_CASE("amounts that went out stay numbers for a spreadsheet") {
    const Folder here;
    lay_hostile_library(here);
    const Outcome outcome = program_run::run(here.path(), "stock use '=HYPERLINK(1)' 100g --csv");
    CHECK(outcome.output.find(",-100,") != std::string::npos);
    CHECK(outcome.output.find("'=HYPERLINK(1)") != std::string::npos);
}
