#include "cli/help.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "cli/command_groups.h"
#include "cli/flag_groups.h"
#include "cli/help_topics.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

/// A command with no more flags than this needs no headings over them.
constexpr std::size_t seen_at_a_look = 8;
/// A group with fewer flags than this gets no heading of its own.
constexpr std::size_t worth_a_heading = 3;
/// The widest column of names; a longer name pushes its line to the right.
constexpr std::size_t widest_names = 24;

std::string usage_line(const CommandSpec& command) {
    std::string line = "baitwright " + std::string(command.verb);
    for (const Word& word : command.words) {
        std::string name = std::string(word.name) + (word.repeatable ? "..." : "");
        line += word.required ? " " + name : " [" + name + "]";
    }
    return line + " [flags]";
}

std::string flag_name(const Flag& flag) {
    return std::string(flag.name) + (flag.value.empty() ? "" : " " + std::string(flag.value));
}

/// All that is to be known of: the command's own and those of all commands; not those that are going.
std::vector<const Flag*> flags_shown(const CommandSpec& command) {
    std::vector<const Flag*> shown;
    for (const std::vector<Flag>* flags : {&command.flags, &common_flags()})
        for (const Flag& flag : *flags)
            if (flag.instead.empty()) shown.push_back(&flag);
    return shown;
}

/// How wide the column of names of this command is.
std::size_t names_column(const CommandSpec& command) {
    std::size_t widest = 0;
    for (const Word& word : command.words) widest = std::max(widest, word.name.size());
    for (const Flag* flag : flags_shown(command)) widest = std::max(widest, flag_name(*flag).size());
    return std::min(widest, widest_names);
}

std::string named_line(std::string_view name, std::string_view text, std::size_t column) {
    return paragraph(fmt::format("  {:<{}}  ", name, column), text);
}

std::string flag_lines(const std::vector<const Flag*>& flags, std::size_t column) {
    std::string text;
    for (const Flag* flag : flags) text += named_line(flag_name(*flag), flag_help(*flag), column);
    return text;
}

/// The flags below headings; what is too little for one stands before the last, without a heading where it is the
/// first.
std::string headed_flags(const CommandSpec& command, std::size_t column) {
    std::array<std::vector<const Flag*>, flag_group_titles.size()> groups;
    for (const Flag* flag : flags_shown(command)) {
        const FlagGroup* group = flag_group(command.verb, flag->name);
        groups.at(static_cast<std::size_t>(group ? *group : FlagGroup::anything_else)).push_back(flag);
    }
    const auto headed = [&](std::size_t i, const std::vector<const Flag*>& flags) {
        return std::string(flag_group_titles.at(i)) + "\n" + flag_lines(flags, column);
    };
    constexpr auto rest_at = static_cast<std::size_t>(FlagGroup::anything_else);
    std::string text;
    std::vector<const Flag*> rest;
    for (std::size_t i = 0; i < rest_at; ++i)
        if (groups.at(i).size() < worth_a_heading)
            rest.insert(rest.end(), groups.at(i).begin(), groups.at(i).end());
        else
            text += headed(i, groups.at(i));
    rest.insert(rest.end(), groups.at(rest_at).begin(), groups.at(rest_at).end());
    if (text.empty())
        text = flag_lines(rest, column);
    else if (!rest.empty())
        text = "\n" + text + headed(rest_at, rest);
    else
        text = "\n" + text;
    return text + headed(groups.size() - 1, groups.back());
}

/// --dry-run goes with every change, as --json goes with every answer.
bool is_seen_at_a_look(const CommandSpec& command) {
    const auto own = std::count_if(command.flags.begin(), command.flags.end(),
                                   [](const Flag& flag) { return flag.name != "--dry-run"; });
    return static_cast<std::size_t>(own) <= seen_at_a_look;
}

std::string flags_text(const CommandSpec& command, std::size_t column) {
    if (!is_seen_at_a_look(command)) return headed_flags(command, column);
    return flag_lines(flags_shown(command), column);
}

/// A line for each command whose name begins so.
std::string command_lines(std::string_view beginning) {
    std::size_t widest = 0;
    for (const CommandSpec& command : all_commands())
        if (command.verb.starts_with(beginning)) widest = std::max(widest, command.verb.size());
    std::string lines;
    for (const CommandSpec& command : all_commands())
        if (command.verb.starts_with(beginning)) lines += named_line(command.verb, command.summary, widest);
    return lines;
}

/// "your mixes: list show check ...": as many of the words as the line holds.
std::string folded_line(const JobLine& line) {
    constexpr std::size_t column = 10;
    const std::vector<std::string> words = second_words(line.word);
    if (columns_shown() < text_columns) return named_line(line.word, line.says, column);
    std::string text = fmt::format("  {:<{}}  {}", line.word, column, line.says);
    if (!words.empty()) text += is_command(line.word) ? "; also:" : ":";
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::size_t room = columns_shown() - (i + 1 < words.size() ? 4 : 0);
        if (text.size() + 1 + words[i].size() > room) return text + " ...\n";
        text += " " + words[i];
    }
    return text + "\n";
}

std::string examples_of(const CommandSpec& command) {
    std::string text;
    for (const std::string& example : examples(command)) text += "  " + example + "\n";
    return text.empty() ? text : "\nFor example\n" + text;
}

}  // namespace

std::vector<std::string> examples(const CommandSpec& command) {
    std::vector<std::string> lines;
    for (std::string_view rest = command.example; !rest.empty();) {
        const auto end = std::min(rest.find('\n'), rest.size());
        lines.emplace_back(rest.substr(0, end));
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return lines;
}

std::string flag_help(const Flag& flag) {
    std::string text(flag.help);
    if (flag.usual.empty()) return text;
    std::string yours = "your usual " + std::string(flag.usual);
    if (flag.usual == "water-temp") yours = "your usual water";
    const auto at = text.rfind("(default:");
    if (at == std::string::npos) return text + " (default: " + yours + ")";
    return text.insert(text.find(')', at), "; or " + yours);
}

std::string help_text() {
    std::string text = paragraph("",
                                 "baitwright works out an angler's bait: what to weigh, how much water and when, what "
                                 "it costs, what it does in the water.");
    for (const JobGroup& group : job_groups()) {
        text += "\n" + std::string(group.title) + "\n";
        for (const JobLine& line : group.lines)
            if (begins_command(line.word) || line.word == "help" || line.word.starts_with("-"))
                text += folded_line(line);
    }
    return text +
           "\nTo start: baitwright mix \"silt bed\" --wet-volume 3l\n"
           "Each command says more: baitwright mix --help\n";
}

std::string help_text(const CommandSpec& command) {
    const std::size_t column = names_column(command);
    std::string text = paragraph("", usage_line(command)) + paragraph("", command.summary) + examples_of(command);
    if (!command.words.empty()) text += "\n";
    for (const Word& word : command.words) text += named_line(word.name, word.help, column);
    if (command.words.empty() && is_seen_at_a_look(command)) text += "\n";
    text += flags_text(command, column);
    if (const std::string more = command_lines(std::string(command.verb) + " "); !more.empty())
        text += "\nThere is also\n" + more;
    return text;
}

std::string help_of_group(std::string_view word) {
    const std::string lines = command_lines(std::string(word) + " ");
    return lines.empty()
               ? lines
               : fmt::format("baitwright {} needs a subcommand:\n\n{}\nEach says more with --help.\n", word, lines);
}

}  // namespace baitwright
