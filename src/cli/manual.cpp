#include "cli/manual.h"

#include <fmt/format.h>

#include <algorithm>

#include "cli/command_groups.h"
#include "cli/flag_groups.h"
#include "cli/flags_of.h"
#include "cli/help.h"
#include "cli/roff.h"
#include "cli/surroundings_told.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

/// A command with no more flags than this needs no headings over them.
constexpr std::size_t flags_without_headings = 8;

std::vector<const CommandSpec*> commands_of(std::string_view first_word) {
    std::vector<const CommandSpec*> found;
    for (const CommandSpec& command : all_commands())
        if (command.verb.substr(0, command.verb.find(' ')) == first_word) found.push_back(&command);
    return found;
}

std::string page_of(std::string_view first_word) {
    return "baitwright-" + std::string(first_word);
}

RoffPage begun_page(const std::string& name, std::string_view says, const std::string& dated) {
    RoffPage page(name, dated, "baitwright " BAITWRIGHT_VERSION);
    page.section("name");
    page.name_line(name, says);
    return page;
}

std::vector<std::string> words_to_type(const CommandSpec& command) {
    std::vector<std::string> words;
    for (const Word& word : command.words) {
        const std::string name = std::string(word.name) + (word.repeatable ? "..." : "");
        words.push_back(word.required ? name : "[" + name + "]");
    }
    return words;
}

void tell_flag(RoffPage& page, const Flag& flag) {
    page.item(flag.name, flag.value, sentence(flag_help(flag)));
}

void tell_words(RoffPage& page, const CommandSpec& command) {
    for (const Word& word : command.words) page.item("", word.name, sentence(std::string(word.help)));
}

/// Under the headings that help has too.
void tell_headed_flags(RoffPage& page, const CommandSpec& command) {
    for (std::size_t i = 0; i < flag_group_titles.size(); ++i) {
        bool headed = false;
        for (const Flag* flag : flags_of(command)) {
            const FlagGroup* group = flag_group(command.verb, flag->name);
            if (static_cast<std::size_t>(group ? *group : FlagGroup::anything_else) != i) continue;
            if (!headed) page.subsection(flag_group_titles.at(i));
            headed = true;
            tell_flag(page, *flag);
        }
    }
}

void tell_only_command(RoffPage& page, const CommandSpec& command) {
    tell_words(page, command);
    page.section("options");
    if (command.flags.size() > flags_without_headings) return tell_headed_flags(page, command);
    for (const Flag* flag : flags_of(command)) tell_flag(page, *flag);
}

void tell_commands(RoffPage& page, const std::vector<const CommandSpec*>& commands) {
    page.section("commands");
    for (const CommandSpec* command : commands) {
        page.subsection("baitwright " + std::string(command->verb));
        page.prose(sentence(std::string(command->summary)));
        tell_words(page, *command);
        for (const Flag& flag : command->flags) tell_flag(page, flag);
    }
    page.section("options");
    page.prose("Every one of these commands takes them.");
    for (const Flag& flag : common_flags()) tell_flag(page, flag);
}

/// What all pages end with.
void tell_around(RoffPage& page) {
    page.section("exit status");
    for (const StatusTold& status : statuses_told()) page.item(status.number, "", status.says);
    page.section("files");
    for (const PlaceTold& place : places_told()) page.item("", place.name, place.says);
    page.section("environment");
    for (const PlaceTold& variable : variables_told()) page.item(variable.name, "", variable.says);
}

ManualPage page_about(const JobLine& line, const std::string& dated) {
    const std::string name = page_of(line.word);
    const std::vector<const CommandSpec*> commands = commands_of(line.word);
    RoffPage page = begun_page(name, line.says, dated);
    page.section("synopsis");
    for (const CommandSpec* command : commands) {
        std::vector<std::string> words = words_to_type(*command);
        words.emplace_back("[flags]");
        page.synopsis("baitwright " + std::string(command->verb), words);
    }
    page.section("description");
    page.prose(sentence(std::string(commands.size() == 1 ? commands.front()->summary : line.says)));
    if (commands.size() == 1)
        tell_only_command(page, *commands.front());
    else
        tell_commands(page, commands);
    page.section("examples");
    for (const CommandSpec* command : commands) page.typed(examples(*command));
    tell_around(page);
    page.see_also({"baitwright"});
    return {name, page.text()};
}

void tell_jobs(RoffPage& page, std::vector<std::string>& others) {
    page.section("commands");
    for (const JobGroup& group : job_groups()) {
        bool headed = false;
        for (const JobLine& line : group.lines) {
            if (!begins_command(line.word)) continue;
            if (!headed) page.subsection(group.title);
            headed = true;
            page.item(line.word, "", sentence(std::string(line.says)));
            others.push_back(page_of(line.word));
        }
    }
}

ManualPage first_page(const std::string& dated) {
    RoffPage page = begun_page("baitwright", "the arithmetic and physics of an angler's bait", dated);
    page.section("synopsis");
    page.synopsis("baitwright", {"COMMAND", "...", "[flags]"});
    page.synopsis("baitwright help", {"[COMMAND]"});
    page.synopsis("baitwright --version", {});
    page.section("description");
    page.prose(
        "It works out an angler's bait: what to weigh, how much water and when, what it costs, what it does in the "
        "water. Its library comes with it; what you add, the shed, the prices and the log are kept in one file.");
    page.prose(
        "Names of several words stand in quotes; a mix, a strategy or a venue may also be a TOML file. What all commands "
        "share, such as units, sizes, feels and names, is told by: baitwright help topics");
    std::vector<std::string> others;
    tell_jobs(page, others);
    page.section("options");
    page.prose("Every command takes them.");
    for (const Flag& flag : common_flags()) tell_flag(page, flag);
    page.item("--help", "", "What the command does, with its flags and examples.");
    page.section("examples");
    page.typed({"baitwright mix \"silt bed\" --wet-volume 3l", "baitwright plan \"open carpet\" --start 09:30"});
    tell_around(page);
    std::sort(others.begin(), others.end());
    page.see_also(others);
    return {"baitwright", page.text()};
}

}  // namespace

std::vector<ManualPage> manual_pages(const std::string& dated) {
    std::vector<ManualPage> pages{first_page(dated)};
    for (const JobGroup& group : job_groups())
        for (const JobLine& line : group.lines)
            if (begins_command(line.word)) pages.push_back(page_about(line, dated));
    return pages;
}

}  // namespace baitwright
