// The manual is made from the table of commands: nothing of it is left out, and no text of it is taken for a request.
#include "cli/manual.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <regex>
#include <set>

#include "cli/flags_of.h"
#include "cli/help.h"
#include "cli/program_run.h"
#include "cli/roff.h"
#include "cli/surroundings_told.h"

using namespace baitwright;

namespace {

const std::string* page_called(const std::vector<ManualPage>& pages, const std::string& name) {
    for (const ManualPage& page : pages)
        if (page.name == name) return &page.text;
    return nullptr;
}

std::string page_of_command(const CommandSpec& command) {
    return "baitwright-" + std::string(command.verb.substr(0, command.verb.find(' ')));
}

/// The names of variables that a source file asks the environment for.
std::set<std::string> variables_in(const std::filesystem::path& path) {
    const std::string text = program_run::whole_file(path);
    std::set<std::string> names;
    if (text.find("getenv") == std::string::npos && text.find("environment(\"") == std::string::npos) return names;
    const std::set<std::string> else_said{"FILE", "FOLDER", "WHEN", "FRX"};  // values of flags, and what less is told
    const std::regex name("\"([A-Z][A-Z_]+)\"");
    for (std::sregex_iterator it(text.begin(), text.end(), name), end; it != end; ++it)
        if (else_said.count((*it)[1]) == 0) names.insert((*it)[1]);
    return names;
}

}  // namespace

TEST_CASE("every command has its page, with each of its flags, words and examples") {
    const std::vector<ManualPage> pages = manual_pages("2026-11-28");
    REQUIRE(pages.front().name == "baitwright");
    for (const CommandSpec& command : all_commands()) {
        CAPTURE(command.verb);
        const std::string* page = page_called(pages, page_of_command(command));
        REQUIRE(page != nullptr);
        CHECK(page->find("\\fBbaitwright " + std::string(command.verb) + "\\fR") != std::string::npos);
        for (const Flag* flag : flags_of(command)) {
            CAPTURE(flag->name);
            CHECK(page->find("\n\\fB" + in_roff(flag->name) + "\\fR") != std::string::npos);
        }
        for (const Word& word : command.words) CHECK(page->find(in_roff(word.name)) != std::string::npos);
        for (const std::string& example : examples(command))
            CHECK(page->find("\n" + in_roff(example) + "\n") != std::string::npos);
        CHECK(pages.front().text.find(".BR " + in_roff(page_of_command(command)) + " (1)") != std::string::npos);
    }
}

TEST_CASE("every page has the sections that a reader looks for") {
    for (const ManualPage& page : manual_pages("2026-11-28")) {
        CAPTURE(page.name);
        CHECK(page.text.starts_with(".TH BAITWRIGHT"));
        CHECK(page.text.find(" 1 \"2026-11-28\" \"baitwright ") != std::string::npos);
        for (const char* heading : {"NAME", "SYNOPSIS", "DESCRIPTION", "OPTIONS", "EXAMPLES", "EXIT STATUS", "FILES",
                                    "ENVIRONMENT", "SEE ALSO"})
            CHECK(page.text.find("\n.SH " + std::string(heading) + "\n") != std::string::npos);
    }
}

TEST_CASE("what roff would obey is a letter like any other on a page") {
    CHECK(in_roff("--feel") == "\\-\\-feel");
    CHECK(in_roff(".TH") == "\\&.TH");
    CHECK(in_roff("'br") == "\\(aqbr");
    CHECK(in_roff("a\\fBb") == "a\\efBb");
    CHECK(in_roff("\"x\" `y` ~ ^") == "\\(dqx\\(dq \\(gay\\(ga \\(ti \\(ha");
    CHECK(in_roff("£2") == "\\[u00A3]2");
    CHECK(in_roff("15 °C") == "15 \\[u00B0]C");
    CHECK(in_roff("\u990c") == "\\[u990C]");
    CHECK(in_roff("\U0001F41F") == "\\[u1F41F]");
    CHECK(in_roff("a\n.b") == "a .b");
}

TEST_CASE("the manual tells of each variable that the program asks the environment for") {
    std::set<std::string> asked, told;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(BAITWRIGHT_SOURCE_DIR "/src"))
        if (entry.path().extension() == ".cpp" && entry.path().filename() != "surroundings_told.cpp")
            asked.merge(variables_in(entry.path()));
    for (const PlaceTold& variable : variables_told()) told.insert(std::string(variable.name));
    CHECK(asked.size() > 5);
    for (const std::string& name : asked) {
        CAPTURE(name);
        CHECK(told.count(name) == 1);
    }
}

TEST_CASE("the program prints a page, or writes all of them, alike on every day") {
    const program_run::Folder here;
    const program_run::Outcome page = program_run::run(here.path(), "manual stock");
    CHECK(page.status == 0);
    CHECK(page.output.starts_with(".TH BAITWRIGHT\\-STOCK 1 \"\""));
    for (const char* folder : {"one", "two"}) {
        std::filesystem::create_directory(here.path() / folder);
        const auto written = program_run::run(here.path(), std::string("manual --date 2026-11-28 --to ") + folder);
        CHECK(written.status == 0);
        CHECK(written.output.empty());
    }
    for (const ManualPage& each : manual_pages("2026-11-28"))
        for (const char* folder : {"one", "two"})
            CHECK(program_run::whole_file(here.path() / folder / (each.name + ".1")) == each.text);
    CHECK(program_run::run(here.path(), "manual shout").status == 64);
    CHECK(program_run::run(here.path(), "manual --to").status == 64);
    CHECK(program_run::run(here.path(), "manual --date tomorrow").status != 0);
}

TEST_CASE("where the day of the source is told by the environment, the pages bear that one") {
    const program_run::Folder here;
    setenv("SOURCE_DATE_EPOCH", "1700000000", 1);
    const auto told = program_run::run(here.path(), "manual mix --date 2026-11-28");
    setenv("SOURCE_DATE_EPOCH", "soon", 1);
    const auto nonsense = program_run::run(here.path(), "manual mix --date 2026-11-28");
    unsetenv("SOURCE_DATE_EPOCH");
    CHECK(told.output.starts_with(".TH BAITWRIGHT\\-MIX 1 \"2023-11-14\""));
    CHECK(nonsense.output.starts_with(".TH BAITWRIGHT\\-MIX 1 \"2026-11-28\""));
}
