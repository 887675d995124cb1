// The person's editor, and what is usual, through the program.
#include <catch2/catch.hpp>
#include <cstdlib>

#include "cli/program_run.h"

using program_run::Folder;
using program_run::Outcome;

namespace {

/// Types the line with that editor named, and with a folder for temporary files of its own.
Outcome edited(const Folder& here, const std::string& editor, const std::string& line) {
    const std::filesystem::path temporary = here.path() / "tmp";
    std::filesystem::create_directories(temporary);
    setenv("TMPDIR", temporary.c_str(), 1);
    unsetenv("VISUAL");
    setenv("EDITOR", editor.c_str(), 1);
    const Outcome outcome = program_run::run(here.path(), line);
    unsetenv("EDITOR");
    unsetenv("TMPDIR");
    return outcome;
}

std::size_t files_kept(const Folder& here) {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(here.path() / "tmp")) count += entry.exists() ? 1 : 0;
    return count;
}

}  // namespace

TEST_CASE("what comes out of the editor takes the entry's place, and nothing is left lying about") {
    const Folder here;
    const Outcome outcome = edited(here, "sed -i s/firm/soft/", "recipe edit \"silt bed\"");
    CHECK(outcome.status == 0);
    CHECK(outcome.output == "silt bed: replaced; the old version is kept\n");
    CHECK(program_run::run(here.path(), "recipe show \"silt bed\"").output.find("soft") != std::string::npos);
    CHECK(files_kept(here) == 0);
    CHECK(edited(here, "true", "recipe edit \"silt bed\"").output == "silt bed: unchanged\n");
}

TEST_CASE("a slip made in the editor is told, changes nothing, and the text is kept") {
    const Folder here;
    const std::string before = program_run::run(here.path(), "recipe show \"silt bed\" --toml").output;
    const Outcome slip = edited(here, "sed -i s/mass/moss/", "recipe edit \"silt bed\"");
    CHECK(slip.status == 65);
    CHECK(slip.errors.find("'moss' is not a key of a part") != std::string::npos);
    CHECK(slip.errors.find("your text is kept") != std::string::npos);
    CHECK(files_kept(here) == 1);
    CHECK(program_run::run(here.path(), "recipe show \"silt bed\" --toml").output == before);
    const Outcome unknown = edited(here, "sed -i 's/maize meal/moon dust/'", "recipe edit \"silt bed\"");
    CHECK(unknown.status == 65);
    CHECK(unknown.errors.find("no ingredient or mix is called 'moon dust'") != std::string::npos);
    CHECK(program_run::run(here.path(), "recipe show \"silt bed\" --toml").output == before);
}

TEST_CASE("an editor that fails or is not there changes nothing") {
    const Folder here;
    const std::string before = program_run::run(here.path(), "venue show \"long pit\" --toml").output;
    for (const char* editor : {"false", "no-such-editor-anywhere", "kill -9 $$; cat"}) {
        const Outcome outcome = edited(here, editor, "venue edit \"long pit\"");
        INFO(editor << ": " << outcome.errors);
        CHECK(outcome.status == 74);
        CHECK(outcome.errors.find("nothing was changed") != std::string::npos);
        CHECK(program_run::run(here.path(), "venue show \"long pit\" --toml").output == before);
    }
}

TEST_CASE("an entry that the editor gave another name is renamed, and what uses it follows") {
    const Folder here;
    const Outcome outcome =
        edited(here, "sed -i 's/name = \"silt bed\"/name = \"pit bed\"/'", "recipe edit \"silt bed\"");
    CHECK(outcome.status == 0);
    CHECK(program_run::run(here.path(), "strategy show \"open carpet\"").output.find("pit bed") != std::string::npos);
    CHECK(program_run::run(here.path(), "recipe show \"silt bed\"").status == 66);
    CHECK(edited(here, "sed -i 's/name = \"pit bed\"/name = \"weighted silt\"/'", "recipe edit \"pit bed\"").status ==
          64);
    CHECK(program_run::run(here.path(), "recipe show \"pit bed\"").status == 0);
}

TEST_CASE("what is usual stands in for each flag of its meaning, and what is typed goes before it") {
    const Folder here;
    REQUIRE(program_run::run(here.path(),
                             "usual --pump 80ml --vessel 1l --tub 40x30cm --kit 'cup 250' --venue 'long pit' "
                             "--water-temp 12degC --people 2 --travel 40min --hands 2 --currency EUR --price-pack 1kg")
                .status == 0);
    const std::vector<std::pair<std::string, std::string>> lines{
        {"soak 'expander 4 mm' --amount 1pt",
         "soak 'expander 4 mm' --amount 1pt --pump 80ml --vessel 1l --water-temp 12degC"},
        {"soak 'fishmeal pellet 4 mm' --amount 1pt", "soak 'fishmeal pellet 4 mm' --amount 1pt --water-temp 12degC"},
        {"mix 'silt bed' --dry-mass 1kg", "mix 'silt bed' --dry-mass 1kg --people 2 --water-temp 12degC"},
        {"dry 'silt bed' --hours 4", "dry 'silt bed' --hours 4 --tub 40x30cm"},
        {"drop 'silt bed' --depth 2m --cup 250ml", "drop 'silt bed' --depth 2m --cup 250ml --water-temp 12degC"},
        {"plan 'open carpet'",
         "plan 'open carpet' --venue 'long pit' --kit 'cup 250' --people 2 --water-temp 12degC --pump 80ml "
         "--vessel 1l --travel 40min --hands 2"},
        {"cost 'open carpet'", "cost 'open carpet' --people 2"},
        {"advise --depth 2m", "advise --depth 2m --water-temp 12degC"}};
    const Folder plain;
    for (const auto& [line, in_full] : lines) {
        INFO(line);
        const Outcome usual = program_run::run(here.path(), line), full = program_run::run(plain.path(), in_full);
        CHECK(usual.status == full.status);
        const auto told = usual.output.find("\nYour usual: ");
        REQUIRE(told != std::string::npos);
        CHECK(usual.output.substr(0, told) == full.output);
    }
    const Outcome typed = program_run::run(here.path(), "mix 'silt bed' --dry-mass 1kg --people 1 --water-temp 15degC");
    CHECK(typed.output == program_run::run(plain.path(), "mix 'silt bed' --dry-mass 1kg").output);
}
