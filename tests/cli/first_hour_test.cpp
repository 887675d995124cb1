// What a newcomer types in the first hour: it works, or the answer says what to type next.
#include <catch2/catch.hpp>
#include <cstdlib>

#include "cli/program_run.h"
#include "files/csv.h"

using program_run::Folder;
using program_run::Outcome;

TEST_CASE("what is typed in the first hour works, or tells the way out") {
    unsetenv("EDITOR");
    unsetenv("VISUAL");
    const std::string table = program_run::whole_file(BAITWRIGHT_SOURCE_DIR "/tests/cli/first_hour.csv");
    const std::vector<baitwright::CsvRow> rows = baitwright::read_csv(table);
    CHECK(rows.size() >= 61);  // the headings too
    for (std::size_t i = 1; i < rows.size(); ++i) {
        const std::vector<std::string>& row = rows[i].cells;
        REQUIRE(row.size() == 4);
        const Folder here;
        for (std::string before = row[1]; !before.empty();) {
            const auto end = std::min(before.find(';'), before.size());
            const Outcome made = program_run::run(here.path(), before.substr(0, end));
            INFO(before << "\n" << made.errors);
            CHECK(made.status == 0);
            before.erase(0, std::min(end + 1, before.size()));
        }
        const Outcome outcome = program_run::run(here.path(), row[0]);
        INFO(row[0] << "\n" << outcome.output << outcome.errors);
        CHECK(std::to_string(outcome.status) == row[2]);
        CHECK((outcome.output + outcome.errors).find(row[3]) != std::string::npos);
        if (outcome.status != 0)
            CHECK((outcome.output + outcome.errors).find(outcome.status == 1 ? "" : "hint: ") != std::string::npos);
    }
}
