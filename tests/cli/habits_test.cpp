// The habits of a good command line, a row each in `habits.csv`: what is run by the shell, in a folder of its own, and
// what must hold then, as a shell's test over what it printed (`out`, `err`) and how it ended (`status`). Habits that
// need a terminal are in `habits_on_terminal.py`; those of every command stand here.
#include <fmt/format.h>

#include <algorithm>
#include <catch2/catch.hpp>

#include "cli/colour.h"
#include "cli/help.h"
#include "cli/old_flags.h"
#include "cli/parse_arguments.h"
#include "cli/program_run.h"
#include "cli/progress_line.h"
#include "cli/terminal.h"
#include "reference/reference_rows.h"

using namespace baitwright;

namespace {

namespace fs = std::filesystem;

const fs::path habits_folder = fs::path(BAITWRIGHT_SOURCE_DIR) / "tests" / "cli";

/// Nothing where the habit holds; else what was printed.
std::string broken_habit(const std::string& run, const std::string& holds) {
    const program_run::Folder here;
    const std::string around = fmt::format(
        "cd '{0}' && b='{1}' && widths='{2}/habits_columns.py' && esc=$(printf '\\033') && export "
        "LC_ALL=C.UTF-8 HOME='{0}' XDG_DATA_HOME='{0}/data' BAITWRIGHT_TODAY={3} && "
        "unset NO_COLOR COLUMNS LINES PAGER EDITOR VISUAL TERM; ",
        here.path().string(), BAITWRIGHT_PROGRAM, habits_folder.string(), program_run::today);
    program_run::write(here.path() / "run.sh",
                       around + "( " + run + "\n) </dev/null >out 2>err; echo $? >status; ( " + holds + "\n)\n");
    const std::string line =
        "sh '" + (here.path() / "run.sh").string() + "' >'" + (here.path() / "held").string() + "' 2>&1";
    if (std::system(line.c_str()) == 0) return {};
    std::string told = "it does not hold";
    for (const char* file : {"held", "status", "out", "err"})
        told += fmt::format("\n{}: {}", file, program_run::whole_file(here.path() / file).substr(0, 400));
    return told;
}

bool takes_flag(const CommandSpec& command, std::string_view name) {
    return std::any_of(command.flags.begin(), command.flags.end(), [&](const Flag& flag) { return flag.name == name; });
}

CommandSpec command_with_old_flag() {
    return {"mix",   "a command with a flag that is going",
            {},      {{"--wet-volume", "VOLUME", "how much"}, {"--volume", "VOLUME", "", false, {}, "--wet-volume"}},
            nullptr, "baitwright mix"};
}

}  // namespace

TEST_CASE("the habits of a good command line") {
    const auto rows = reference::rows_of(program_run::whole_file(habits_folder / "habits.csv"));
    REQUIRE(rows.size() >= 36);
    for (const auto& row : rows) {
        INFO(row.at("habit") << ": " << row.at("run") << "\nmust hold: " << row.at("holds"));
        CHECK(broken_habit(row.at("run"), row.at("holds")) == "");
    }
}

TEST_CASE("a habit that does not hold is found") {
    CHECK(broken_habit("$b --version", "grep -q gudgeon out").find("baitwright") != std::string::npos);
    CHECK(broken_habit("$b mxi", "test $(cat status) = 0").find("64") != std::string::npos);
}

TEST_CASE("every command that changes the store can be tried") {
    for (const CommandSpec& command : all_commands()) {
        CAPTURE(command.verb);
        const bool changes =
            command.effect != Effect::answers || takes_flag(command, "--book") || takes_flag(command, "--save");
        CHECK(takes_flag(command, "--dry-run") == changes);
    }
}

TEST_CASE("a flag that is going works, is told, and is not in help") {
    const CommandSpec command = command_with_old_flag();
    const std::vector<std::string> typed{"--volume=3l"};
    CHECK(parse_arguments(command, typed).value("--wet-volume") == "3l");
    CHECK(old_flags_told(command, typed) == "note: --volume is going; type --wet-volume in its place\n");
    CHECK(old_flags_told(command, {"--wet-volume", "3l"}).empty());
    CHECK(old_flags_told(command, {"--", "--volume"}).empty());
    CHECK(help_text(command).find("--volume") == std::string::npos);
    CHECK(help_text(command).find("--wet-volume") != std::string::npos);
    CHECK_THROWS_AS(parse_arguments(command, {"--volume", "3l", "--wet-volume", "2l"}), UsageError);
}

TEST_CASE("what is wished of the terminal is taken out of what is typed, at any place before --") {
    std::vector<std::string> given{"--no-pager", "mix", "--color", "never", "silt bed", "--", "--color"};
    const TerminalWishes wishes = take_terminal_wishes(given);
    CHECK(given == std::vector<std::string>{"mix", "silt bed", "--", "--color"});
    CHECK(wishes.colour == ColourWish::never);
    CHECK_FALSE(wishes.pager);
    std::vector<std::string> without{"mix", "--color"};
    CHECK_THROWS_AS(take_terminal_wishes(without), UsageError);
}

TEST_CASE("only the water and what begins a warning is marked") {
    CHECK(coloured_answer("Pour      510 ml, rest 20 min\n") == "Pour      \033[1m510 ml\033[0m, rest 20 min\n");
    CHECK(coloured_answer("Pour      2.6 l, rest\n") == "Pour      \033[1m2.6 l\033[0m, rest\n");
    CHECK(coloured_answer("  water        720 ml   1.3 pt\n") == "  water        \033[1m720 ml   1.3 pt\033[0m\n");
    CHECK(coloured_answer("Mind      It is old.\n") == "\033[1;33mMind\033[0m      It is old.\n");
    CHECK(coloured_answer("Take care Fine dust\n          UK limit\n") ==
          "\033[1;33mTake care\033[0m Fine dust\n          UK limit\n");
    CHECK(coloured_answer("Mindful\nPouring\n") == "Mindful\nPouring\n");
    CHECK(coloured_errors("a.toml:1:2: error: no\n  hint: see error: 5\n") ==
          "a.toml:1:2: \033[1;31merror:\033[0m no\n  hint: see error: 5\n");
}

TEST_CASE("the time left is told from the time taken") {
    using std::chrono::seconds;
    CHECK(progress_words("taking in log.csv", 25, 100, seconds(4)) == "taking in log.csv: 25 %, about 12 s left");
    CHECK(progress_words("copying", 1, 100, seconds(3)) == "copying: 1 %, about 5 min left");
    CHECK(progress_words("copying", 0, 100, seconds(3)) == "copying: 0 %");
    CHECK(progress_words("copying", 0, 0, seconds(3)) == "copying");
}
