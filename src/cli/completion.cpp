#include "cli/completion.h"

#include <algorithm>
#include <array>

#include "cli/asked_for.h"
#include "cli/choices.h"
#include "cli/command_groups.h"
#include "cli/flags_of.h"
#include "cli/help.h"
#include "cli/help_topics.h"
#include "cli/usual_place.h"
#include "cli/words_of_value.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr Flag help_flag{"--help", "", "what the command does, and its flags"};

/// Of two that tell the same thing otherwise, only one is given.
constexpr std::array<std::pair<std::string_view, std::string_view>, 2> either_or{
    {{"--json", "--csv"}, {"--store", "--library"}}};

const Flag* flag_called(const CommandSpec& command, std::string_view name) {
    for (const Flag* flag : flags_of(command))
        if (flag->name == name) return flag;
    return nullptr;
}

const CommandSpec* command_called(std::string_view verb) {
    for (const CommandSpec& command : all_commands())
        if (command.verb == verb) return &command;
    return nullptr;
}

/// "~/bait.db", as a shell would have had it before the program sees it.
std::string from_home(const std::string& path) {
    return path.starts_with("~/") ? environment("HOME") + path.substr(1) : path;
}

std::string usual_store_if_any() {
    try {
        return usual_store().string();
    } catch (const Error&) {
        return {};
    }
}

/// What stands on the line before the word that is being typed.
struct LineSoFar {
    std::size_t words = 0;                ///< of the command that are no flags
    std::vector<std::string_view> given;  ///< flags
    const Flag* open = nullptr;           ///< the flag whose value is being typed
    bool flags_over = false;              ///< behind "--" all are words
    LibraryPlace place;
};

void take_place(LineSoFar& line, std::string_view flag, const std::string& value) {
    if (flag == "--store") line.place.store = from_home(value);
    if (flag == "--library") line.place.folder = from_home(value);
}

/// Takes the flag at `at`, and moves to the last word of its value.
void take_flag(const CommandSpec& command, const std::vector<std::string>& words, std::size_t& at, LineSoFar& line) {
    const std::size_t typed = words.size() - 1;
    const auto equals = words[at].find('=');
    const Flag* flag = flag_called(command, std::string_view(words[at]).substr(0, equals));
    if (!flag) return;
    line.given.push_back(flag->name);
    if (flag->value.empty()) return;
    if (equals != std::string::npos) return take_place(line, flag->name, words[at].substr(equals + 1));
    if (++at == typed) {
        line.open = flag;
        return;
    }
    take_place(line, flag->name, words[at]);
    std::vector<std::string> after;
    for (std::size_t i = at + 1; i < typed && !words[i].starts_with("--"); ++i) after.push_back(words[i]);
    at += words_of_value(flag->value, words[at], after);
}

LineSoFar read_line(const CommandSpec& command, const std::vector<std::string>& words, std::size_t first) {
    LineSoFar line;
    line.place.store = usual_store_if_any();
    for (std::size_t at = first; at + 1 < words.size(); ++at) {
        const std::string& word = words[at];
        if (line.flags_over || word.size() < 2 || word.front() != '-')
            ++line.words;
        else if (word == "--")
            line.flags_over = true;
        else
            take_flag(command, words, at, line);
    }
    return line;
}

bool may_be_given(const LineSoFar& line, const Flag& flag) {
    const auto given = [&](std::string_view name) {
        return std::find(line.given.begin(), line.given.end(), name) != line.given.end();
    };
    if (!flag.repeatable && given(flag.name)) return false;
    return std::none_of(either_or.begin(), either_or.end(), [&](const auto& pair) {
        return (flag.name == pair.first && given(pair.second)) || (flag.name == pair.second && given(pair.first));
    });
}

void add_flags(const CommandSpec& command, const LineSoFar& line, const std::string& typed, Completion& completion) {
    const auto add = [&](const Flag& flag) {
        if (may_be_given(line, flag) && begins_so(flag.name, typed))
            completion.candidates.push_back({std::string(flag.name), flag_help(flag)});
    };
    for (const Flag* flag : flags_of(command)) add(*flag);
    add(help_flag);
}

const Word* word_at(const CommandSpec& command, std::size_t index) {
    if (index < command.words.size()) return &command.words[index];
    return !command.words.empty() && command.words.back().repeatable ? &command.words.back() : nullptr;
}

/// Of a command whose name is complete.
Completion within(const CommandSpec& command, const std::vector<std::string>& words, std::size_t first) {
    const LineSoFar line = read_line(command, words, first);
    const std::string& typed = words.back();
    const NamesToType names(line.place);
    if (line.open) return chosen(asked_for(command, *line.open), command, names, typed);
    Completion completion;
    const auto equals = typed.find('=');
    if (!line.flags_over && typed.starts_with("-")) {
        if (equals == std::string::npos)
            add_flags(command, line, typed, completion);
        else if (const Flag* flag = flag_called(command, typed.substr(0, equals)); flag && !flag->value.empty())
            completion = behind(typed.substr(0, equals + 1),
                                chosen(asked_for(command, *flag), command, names, typed.substr(equals + 1)));
        return completion;
    }
    if (const Word* word = word_at(command, line.words))
        completion = chosen(asked_for(command, *word), command, names, typed);
    if (typed.empty() && !line.flags_over && completion.candidates.empty() && completion.files == OfferedFiles::none)
        add_flags(command, line, typed, completion);
    return completion;
}

void add_first_words(const std::string& typed, Completion& completion) {
    for (const JobGroup& group : job_groups())
        for (const JobLine& line : group.lines)
            if (begins_so(line.word, typed) && (begins_command(line.word) || line.word.starts_with("-")))
                completion.candidates.push_back({std::string(line.word), std::string(line.says)});
}

void add_second_words(const std::string& first, const std::string& typed, Completion& completion) {
    const std::string before = first + " ";
    for (const std::string& second : second_words(first))
        if (begins_so(second, typed))
            completion.candidates.push_back({second, std::string(command_called(before + second)->summary)});
}

Completion first_word(const std::string& typed) {
    Completion completion;
    add_first_words(typed, completion);
    if (begins_so("help", typed)) completion.candidates.push_back({"help", "of a command or a topic"});
    if (begins_so("--help", typed)) completion.candidates.push_back({"--help", "every command"});
    return completion;
}

/// "help", "help stock".
Completion of_help(const std::vector<std::string>& words) {
    Completion completion;
    const std::string& typed = words.back();
    if (words.size() == 3) add_second_words(words[1], typed, completion);
    if (words.size() != 2) return completion;
    add_first_words(typed, completion);
    for (const std::string& topic : topic_names())
        if (begins_so(topic, typed)) completion.candidates.push_back({topic, "a topic"});
    return completion;
}

}  // namespace

Completion completion_of(const std::vector<std::string>& words) {
    if (words.empty() || words.size() == 1) return first_word(words.empty() ? "" : words.back());
    if (words.front() == "help") return of_help(words);
    if (words.size() > 2)
        if (const CommandSpec* two = command_called(words[0] + " " + words[1])) return within(*two, words, 2);
    Completion completion;
    if (const CommandSpec* single = command_called(words[0])) completion = within(*single, words, 1);
    if (words.size() > 2) return completion;
    Completion seconds;
    add_second_words(words[0], words[1], seconds);
    completion.candidates.insert(completion.candidates.begin(), seconds.candidates.begin(), seconds.candidates.end());
    return completion;
}

}  // namespace baitwright
