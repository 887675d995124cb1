// One folder per case below golden/: `command` is what is typed after the program's name; `output`, `errors` and
// `status` are what must come of it; other files are laid into the working folder. The lines of `before`, where there
// is one, are typed first, and must end with status 0. The program has run before: its store is there, since making one
// takes it longer than most answers. BAITWRIGHT_ACCEPT=1 writes what came.
#include <algorithm>
#include <catch2/catch.hpp>
#include <vector>

#include "cli/program_run.h"

namespace {

namespace fs = std::filesystem;

const fs::path golden = fs::path(BAITWRIGHT_SOURCE_DIR) / "tests" / "cli" / "golden";

std::vector<fs::path> golden_cases() {
    std::vector<fs::path> found;
    for (const auto& entry : fs::directory_iterator(golden)) found.push_back(entry.path());
    std::sort(found.begin(), found.end());
    return found;
}

void lay_files(const fs::path& from, const fs::path& to) {
    for (const auto& entry : fs::directory_iterator(from))
        if (entry.path().extension() == ".toml" || entry.path().extension() == ".csv")
            fs::copy_file(entry.path(), to / entry.path().filename());
}

void type_before(const fs::path& before, const fs::path& here) {
    std::ifstream lines(before);
    for (std::string line; std::getline(lines, line);) {
        INFO(before.parent_path().filename().string() << ", before: baitwright " << line);
        CHECK(program_run::run(here, line).status == 0);
    }
}

void accept(const fs::path& folder, const program_run::Outcome& outcome) {
    program_run::write(folder / "output", outcome.output);
    program_run::write(folder / "errors", outcome.errors);
    program_run::write(folder / "status", std::to_string(outcome.status) + "\n");
}

std::string widest_line(const std::string& text) {
    std::string widest, line;
    std::size_t most = 0;
    for (const char c : text + "\n") {
        if (c != '\n') {
            line += c;
            continue;
        }
        const auto width = static_cast<std::size_t>(std::count_if(
            line.begin(), line.end(), [](char b) { return (static_cast<unsigned char>(b) & 0xC0U) != 0x80U; }));
        if (width > most) {
            most = width;
            widest = line;
        }
        line.clear();
    }
    return most > 80 ? widest : std::string();
}

}  // namespace

TEST_CASE("each command prints what it printed when its output was last read through") {
    const bool accepting = std::getenv("BAITWRIGHT_ACCEPT") != nullptr;
    REQUIRE(golden_cases().size() >= 8);
    const program_run::Folder first;
    REQUIRE(program_run::run(first.path(), "recipe list").status == 0);
    for (const fs::path& folder : golden_cases()) {
        const program_run::Folder here;
        fs::copy(first.path() / "data", here.path() / "data", fs::copy_options::recursive);
        lay_files(folder, here.path());
        type_before(folder / "before", here.path());
        std::string line = program_run::whole_file(folder / "command");
        line.erase(std::remove(line.begin(), line.end(), '\n'), line.end());
        const program_run::Outcome outcome = program_run::run(here.path(), line);
        if (accepting) accept(folder, outcome);
        INFO(folder.filename().string() << ": baitwright " << line);
        CHECK(outcome.output == program_run::whole_file(folder / "output"));
        CHECK(outcome.errors == program_run::whole_file(folder / "errors"));
        CHECK(std::to_string(outcome.status) + "\n" == program_run::whole_file(folder / "status"));
        if (line.find("--json") == std::string::npos && line.find("--csv") == std::string::npos)
            CHECK(widest_line(outcome.output).empty());
    }
}

TEST_CASE("output that cannot be written ends with status 74") {
    const program_run::Folder here;
    const program_run::Outcome outcome = program_run::run(here.path(), "recipe list >/dev/full; echo $? >status; true");
    CHECK(program_run::whole_file(here.path() / "status") == "74\n");
}
