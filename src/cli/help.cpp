#include "cli/help.h"

#include <fmt/format.h>

#include "report/text_table.h"

namespace baitwright {

namespace {

std::string usage_line(const CommandSpec& command) {
    std::string line = "baitwright " + std::string(command.verb);
    for (const Word& word : command.words) {
        std::string name = std::string(word.name) + (word.repeatable ? "..." : "");
        line += word.required ? " " + name : " [" + name + "]";
    }
    return line + " [flags]";
}

std::string flags_text(const std::vector<Flag>& flags) {
    std::string text;
    for (const Flag& flag : flags) {
        const std::string left = std::string(flag.name) + (flag.value.empty() ? "" : " " + std::string(flag.value));
        text += paragraph(fmt::format("  {:<24}  ", left), flag.help);
    }
    return text;
}

/// A line for each command whose name begins so.
std::string command_lines(std::string_view beginning) {
    std::string lines;
    for (const CommandSpec& command : all_commands())
        if (command.verb.starts_with(beginning))
            lines += paragraph(fmt::format("  {:<18}  ", command.verb), command.summary);
    return lines;
}

}  // namespace

std::string help_text() {
    return "baitwright works out an angler's bait: what to weigh, how much water, what it\ncosts. Say what you want to know:\n\n" +
           command_lines("") +
           "\nEach says more with --help. For example\n  baitwright mix \"silt bed\" --wet-volume 3l\n";
}

std::string help_text(const CommandSpec& command) {
    std::string text = usage_line(command) + "\n" + paragraph("", command.summary) + "\n";
    for (const Word& word : command.words) text += paragraph(fmt::format("  {:<24}  ", word.name), word.help);
    text += flags_text(command.flags) + "\nAny command also takes\n" + flags_text(common_flags());
    if (const std::string more = command_lines(std::string(command.verb) + " "); !more.empty())
        text += "\nThere is also\n" + more;
    if (!command.example.empty()) text += "\nFor example\n  " + std::string(command.example) + "\n";
    return text;
}

std::string help_of_group(std::string_view word) {
    const std::string lines = command_lines(std::string(word) + " ");
    return lines.empty()
               ? lines
               : fmt::format("baitwright {} needs a subcommand:\n\n{}\nEach says more with --help.\n", word, lines);
}

}  // namespace baitwright
