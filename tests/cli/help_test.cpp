// Help as a person reads it: nothing is left out of it, it fits the screen, and what it says to type works.
#include "cli/help.h"

#include <fmt/format.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <set>

#include "cli/command_groups.h"
#include "cli/flag_groups.h"
#include "cli/help_topics.h"
#include "cli/program_run.h"
#include "quantities/named_sizes.h"
#include "quantities/quantity_text.h"
#include "report/text_table.h"

using namespace baitwright;

namespace {

std::vector<std::string> help_lines(const std::string& text) {
    std::vector<std::string> lines;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size());
        lines.push_back(text.substr(at, end - at));
        at = end + 1;
    }
    return lines;
}

std::string too_wide(const std::string& text) {
    for (const std::string& line : help_lines(text))
        if (text_width(line) > text_columns) return line;
    return {};
}

std::string first_word(std::string_view verb) {
    return std::string(verb.substr(0, verb.find(' ')));
}

std::string help_typed(const program_run::Folder& here, const std::string& line) {
    const program_run::Outcome outcome = program_run::run(here.path(), line);
    INFO("baitwright " << line << ": " << outcome.errors);
    CHECK(outcome.status == 0);
    CHECK(outcome.errors.empty());
    return outcome.output;
}

/// The files that examples name, and a shed that they take from.
void lay_for_examples(const program_run::Folder& here) {
    const std::filesystem::path documented = BAITWRIGHT_SOURCE_DIR "/tests/cli/documented";
    std::filesystem::copy_file(documented / "my-bags.csv", here.path() / "my-bags.csv");
    std::filesystem::copy_file(documented / "my-water.toml", here.path() / "my-water.toml");
    std::filesystem::copy_file(documented / "shed" / "my-crumb.toml", here.path() / "my-bags.toml");
    std::filesystem::copy_file(documented / "my-silt.toml", here.path() / "my-mix.toml");
    std::filesystem::copy_file(BAITWRIGHT_SOURCE_DIR "/recipes/strategies/open-carpet.toml",
                               here.path() / "my-day.toml");
    for (const char* bought :
         {"\"brown crumb\" 2kg", "\"fresh liquidised bread\" 500g", "\"fishmeal, brown\" 5kg",
          "\"ground fishmeal pellet\" 5kg", "\"maize meal\" 5kg", "\"fishmeal micro pellet 2 mm\" 5kg",
          "\"expander 4 mm\" 1kg", "\"fishmeal pellet 6 mm\" 1kg"})
        REQUIRE(program_run::run(here.path(), "stock buy " + std::string(bought)).status == 0);
    std::filesystem::copy_file(BAITWRIGHT_SOURCE_DIR "/recipes/blends/club-sack.toml", here.path() / "my-blend.toml");
    for (const auto& [kind, name] : {std::pair{"ingredient", "brown crumb"},
                                     {"recipe", "silt bed"},
                                     {"strategy", "open carpet"},
                                     {"venue", "long pit"},
                                     {"blend", "club sack"}})
        for (const std::string& line : {fmt::format(R"({0} copy "{1}" --as "my {1}")", kind, name),
                                        fmt::format(R"({0} copy "{1}" --as "old {1}")", kind, name),
                                        fmt::format(R"({0} remove "old {1}")", kind, name)})
            REQUIRE(program_run::run(here.path(), line).status == 0);
    setenv("EDITOR", "true", 1);
    REQUIRE(program_run::run(here.path(), "stock keep \"silt bed\" 1kg --frozen").status == 0);
    REQUIRE(program_run::run(here.path(), "stock keep \"silt bed\" 1kg").status == 0);
    std::filesystem::copy_file(documented / "session-notes.toml", here.path() / "notes.toml");
    for (const char* logged : {"catch --fish bream --count 2 --on 2026-11-19", "bag \"brown crumb\" --on 2026-11-20",
                               "mix \"silt bed\" --dry 1kg --water 680ml --feel firm"})
        REQUIRE(program_run::run(here.path(), "log " + std::string(logged)).status == 0);
    REQUIRE(program_run::run(here.path(), "learn --apply").status == 0);
    std::filesystem::create_directory(here.path() / "stick");
    for (const char* kept : {"backup bait-before-the-move.db", "backup boat.db", "export --all kept"})
        REQUIRE(program_run::run(here.path(), kept).status == 0);
}

}  // namespace

TEST_CASE("every command stands on the front page of help, in one group, on one line") {
    std::vector<std::string> listed_words;
    for (const JobGroup& group : job_groups())
        for (const JobLine& line : group.lines) listed_words.emplace_back(line.word);
    for (const CommandSpec& command : all_commands()) {
        CAPTURE(command.verb);
        const std::string word = first_word(command.verb);
        CHECK(std::count(listed_words.begin(), listed_words.end(), word) == 1);
        CHECK(help_text().find("\n  " + word + " ") != std::string::npos);
    }
    CHECK(too_wide(help_text()).empty());
    for (const JobGroup& group : job_groups())
        for (const JobLine& line : group.lines) {
            CAPTURE(line.word);
            CHECK(text_width(line.says) + 14 <= text_columns);
        }
}

TEST_CASE("every flag has a group in help") {
    for (const CommandSpec& command : all_commands())
        for (const std::vector<Flag>* flags : {&command.flags, &common_flags()})
            for (const Flag& flag : *flags) {
                CAPTURE(command.verb, flag.name);
                CHECK(flag_group(command.verb, flag.name) != nullptr);
            }
    CHECK(*flag_group("soak", "--bites") == FlagGroup::how_much);
    CHECK(*flag_group("plan", "--bites") == FlagGroup::the_day);
    CHECK(flag_group("mix", "--shout") == nullptr);
}

TEST_CASE("the help of a command shows each of its flags once, within the screen") {
    for (const CommandSpec& command : all_commands()) {
        CAPTURE(command.verb);
        const std::string text = help_text(command);
        CHECK(too_wide(text).empty());
        for (const std::vector<Flag>* flags : {&command.flags, &common_flags()})
            for (const Flag& flag : *flags) {
                const std::vector<std::string> lines = help_lines(text);
                const std::string begins = "  " + std::string(flag.name) + " ";
                CHECK(std::count_if(lines.begin(), lines.end(),
                                    [&](const std::string& line) { return line.starts_with(begins); }) == 1);
            }
    }
}

TEST_CASE("what stands in for a flag that is not given is written alike everywhere, and closes the line") {
    for (const CommandSpec& command : all_commands())
        for (const Flag& flag : command.flags) {
            const std::string text = flag_help(flag);
            CAPTURE(command.verb, text);
            const auto at = text.find("(default");
            if (at == std::string::npos) continue;
            CHECK(text.compare(at, 10, "(default: ") == 0);
            CHECK(text.back() == ')');
        }
}

TEST_CASE("a flag tells that what the person always uses stands in for it") {
    const Flag with_default{"--pump", "VOLUME", "what a stroke draws (default: 100ml)", false, "pump"};
    CHECK(flag_help(with_default) == "what a stroke draws (default: 100ml; or your usual pump)");
    const Flag without{"--kit", "ITEM", "what you have", true, "kit"};
    CHECK(flag_help(without) == "what you have (default: your usual kit)");
}

TEST_CASE("every command has two examples, of itself, within the screen") {
    for (const CommandSpec& command : all_commands()) {
        CAPTURE(command.verb);
        const std::vector<std::string> both = examples(command);
        REQUIRE(both.size() == 2);
        CHECK(both.front() != both.back());
        for (const std::string& example : both) {
            CHECK((example + " ").starts_with("baitwright " + std::string(command.verb) + " "));
            CHECK(text_width(example) + 2 <= text_columns);
        }
    }
}

TEST_CASE("every example in help works") {
    const program_run::Folder model;
    lay_for_examples(model);
    for (const CommandSpec& command : all_commands())
        for (const std::string& example : examples(command)) {
            const program_run::Folder here;
            std::filesystem::copy(model.path(), here.path(), std::filesystem::copy_options::recursive);
            // A file is laid as standard input where the example reads one.
            const auto from = example.find(" < ");
            const std::string input = from == std::string::npos ? "/dev/null" : example.substr(from + 3);
            const std::string typed = example.substr(11, from == std::string::npos ? from : from - 11);
            const program_run::Outcome outcome = program_run::run(here.path(), typed, input);
            INFO(example << "\n" << outcome.output << outcome.errors);
            // The engine of the page is made where Emscripten is installed.
            if (outcome.errors.find("needs the engine that a page carries") != std::string::npos) continue;
            CHECK(outcome.status == 0);
        }
}

TEST_CASE("every example that changes the store can be tried, and no byte of it is another then") {
    const program_run::Folder model;
    lay_for_examples(model);
    const std::string before = program_run::whole_file(model.path() / "data/baitwright/baitwright.db");
    for (const CommandSpec& command : all_commands())
        for (const std::string& example : examples(command)) {
            const bool has_flag = std::any_of(command.flags.begin(), command.flags.end(),
                                              [](const Flag& flag) { return flag.name == "--dry-run"; });
            const bool asked = example.find("--dry-run") != std::string::npos;
            if (!has_flag || asked || command.effect == Effect::keeps) continue;
            const program_run::Folder here;
            std::filesystem::copy(model.path(), here.path(), std::filesystem::copy_options::recursive);
            const auto from = example.find(" < ");
            const std::string input = from == std::string::npos ? "/dev/null" : example.substr(from + 3);
            const std::string typed = example.substr(11, from == std::string::npos ? from : from - 11);
            const program_run::Outcome outcome = program_run::run(here.path(), typed + " --dry-run", input);
            INFO(example << "\n" << outcome.output << outcome.errors);
            CHECK(outcome.status == 0);
            const std::string told = outcome.output + outcome.errors;
            CHECK((told.find("othing was written") != told.npos || told.find("\"dry_run\": true") != told.npos));
            CHECK((program_run::whole_file(here.path() / "data/baitwright/baitwright.db") == before));
        }
}

TEST_CASE("a topic fits the screen and hides no command") {
    REQUIRE(topic_names().size() >= 7);
    for (const std::string& name : topic_names()) {
        CAPTURE(name);
        const std::string text = topic_text(name);
        CHECK_FALSE(text.empty());
        CHECK(help_lines(text).size() <= 24);
        CHECK(too_wide(text).empty());
        CHECK_FALSE(begins_command(name));
        CHECK(topic_text("topics").find("help " + name + " ") != std::string::npos);
    }
    CHECK(topic_text("mix").empty());
}

TEST_CASE("the topics say what the program reads") {
    for (const auto& [name, size] : named_ball_sizes()) {
        CHECK(parse_ball_size(name) == parse<Length>(size));
        CHECK(topic_text("sizes").find(name) != std::string::npos);
    }
    for (const auto& [name, size] : named_vessel_sizes()) {
        CHECK(parse_vessel_size(name) == parse<Volume>(size));
        CHECK(topic_text("sizes").find(name) != std::string::npos);
    }
    const std::unique_ptr<Shelf> shipped = open_library({{}, BAITWRIGHT_SOURCE_DIR "/recipes"});
    for (const Feel& feel : shipped->feels()) CHECK(topic_text("feels").find("  " + feel.name) != std::string::npos);
    for (const char* unit : {"g, kg, oz or lb", "ml, l, pt or floz", "degC, degF or K"})
        CHECK(topic_text("units").find(unit) != std::string::npos);
}

TEST_CASE("whichever way a person asks for help, help comes") {
    const program_run::Folder here;
    const std::string all = help_typed(here, "--help");
    CHECK(all == help_text());
    for (const char* line : {"-h", "help", "help help", "--help --help"}) CHECK(help_typed(here, line) == all);
    const std::string mix = help_typed(here, "mix --help");
    for (const char* line :
         {"help mix", "--help mix", "mix -h", "mix help", "mix \"silt bed\" help", "mix \"silt bed\" --help"})
        CHECK(help_typed(here, line) == mix);
    CHECK(help_typed(here, "recipe help") == help_typed(here, "recipe --help"));
    CHECK(help_typed(here, "stock undo help") == help_typed(here, "stock undo --help"));
    CHECK(help_typed(here, "advise help") == help_typed(here, "advise --help"));
    CHECK(help_typed(here, "help sizes") == topic_text("sizes"));
    CHECK(program_run::run(here.path(), "mix --feel help").status == 64);
}

TEST_CASE("a mix that is called help is a mix all the same") {
    const program_run::Folder here;
    program_run::write(here.path() / "help.toml",
                       "name = \"help\"\nfeel = \"firm\"\n[[part]]\nof = \"brown crumb\"\nshare = 1\n");
    REQUIRE(program_run::run(here.path(), "recipe add help.toml").status == 0);
    CHECK(program_run::run(here.path(), "mix help --dry-mass 1kg").output.find("brown crumb") != std::string::npos);
    CHECK(program_run::run(here.path(), "recipe show help").output.find("brown crumb") != std::string::npos);
}
