#include "cli/parse_arguments.h"

#include <CLI/CLI.hpp>
#include <array>

#include "cli/help.h"
#include "cli/terminal.h"
#include "cli/words_of_value.h"
#include "quantities/listed.h"
#include "quantities/number_text.h"
#include "quantities/quantity_text.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

std::string see_help(const CommandSpec& command) {
    return "see: baitwright " + std::string(command.verb) + " --help";
}

/// The flags that the command takes: its own, those of all, and those about the terminal.
std::array<const std::vector<Flag>*, 3> flags_of(const CommandSpec& command) {
    return {&command.flags, &common_flags(), &terminal_flags()};
}

/// The command's own flags that take such an amount, with it: "--wet-mass 3lb or --dry-mass 3lb".
std::string as_flags(const CommandSpec& command, const std::string& amount) {
    constexpr std::size_t most = 3;
    std::vector<std::string> ways;
    for (const Flag& flag : command.flags)
        if (ways.size() < most && flag.instead.empty() && is_measure_taken(flag.name, flag.value, amount))
            ways.push_back(std::string(flag.name) + " " + amount);
    return baitwright::joined(ways, " or ");
}

/// `given` are the words that are too many.
[[noreturn]] void refuse_surplus(const CommandSpec& command, const std::vector<std::string>& given) {
    std::string amount;
    for (const std::string& word : given) amount += (amount.empty() ? "" : " ") + word;
    if (const std::string ways = as_flags(command, with_points(amount)); !ways.empty())
        throw UsageError("surplus-word", "'" + amount + "' of what?", "say what it is: " + ways);
    throw UsageError("surplus-word", "'" + given.front() + "' is one word too many",
                     "put a name of several words in quotes; " + see_help(command));
}

[[noreturn]] void refuse_unknown(const CommandSpec& command, const std::string& given) {
    std::vector<std::string> names;
    for (const std::vector<Flag>* flags : flags_of(command))
        for (const Flag& flag : *flags)
            if (flag.instead.empty()) names.emplace_back(flag.name);
    const std::string hint = did_you_mean(given.substr(0, given.find('=')), names);
    throw UsageError("unknown-flag", "'" + given + "' is not a flag of '" + std::string(command.verb) + "'",
                     hint.empty() ? see_help(command) : hint);
}

const Flag* find_flag(const CommandSpec& command, std::string_view name) {
    for (const std::vector<Flag>* flags : flags_of(command))
        for (const Flag& flag : *flags)
            if (flag.name == name) return &flag;
    return nullptr;
}

[[noreturn]] void refuse_missing_value(const CommandSpec& command, const Flag& flag) {
    throw UsageError("missing-value", std::string(flag.name) + " needs a value: " + std::string(flag.value),
                     std::string(flag.help) + "; " + see_help(command));
}

/// "--cup=250ml", and "-osheet.pdf": how CLI11 wants a value joined to its flag.
std::string with_value(const Flag& flag, const std::string& value) {
    return std::string(flag.name) + (flag.name.starts_with("--") ? "=" : "") + value;
}

/// The value, with the words behind `at` that belong to it: "--depth 8 ft 6 in". `at` moves to the last of them.
std::string whole_value(const CommandSpec& command, const Flag& flag, const std::string& value,
                        const std::vector<std::string>& given, std::size_t& at) {
    std::vector<std::string> after;
    for (std::size_t i = at + 1; i < given.size() && !find_flag(command, given[i].substr(0, given[i].find('='))); ++i)
        after.push_back(given[i]);
    const std::size_t more = words_of_value(flag.value, value, after);
    std::string whole = value;
    for (std::size_t i = 0; i < more; ++i) whole += ' ' + after[i];
    at += more;
    return whole;
}

/// CLI11 would take "-5 ml" after a flag for a flag of its own, and an empty value for none: join value to flag, so
/// that we can say what is wrong.
std::vector<std::string> joined(const CommandSpec& command, const std::vector<std::string>& given) {
    std::vector<std::string> result;
    for (std::size_t i = 0; i < given.size(); ++i) {
        const auto equals = given[i].find('=');
        const Flag* flag = find_flag(command, given[i].substr(0, equals));
        if (flag && flag->value.empty() && equals != std::string::npos)
            throw UsageError("surplus-value", std::string(flag->name) + " takes no value", "write it alone");
        if (!flag || flag->value.empty()) {
            result.push_back(given[i]);
            continue;
        }
        if (equals != std::string::npos && equals + 1 < given[i].size()) {
            result.push_back(with_value(*flag, whole_value(command, *flag, given[i].substr(equals + 1), given, i)));
            continue;
        }
        if (equals != std::string::npos || i + 1 == given.size() || given[i + 1].empty() ||
            find_flag(command, given[i + 1]))
            refuse_missing_value(command, *flag);
        ++i;
        result.push_back(with_value(*flag, whole_value(command, *flag, given[i], given, i)));
    }
    return result;
}

class Parser {
public:
    explicit Parser(const CommandSpec& command) : command_(command), app_(std::string(command.summary)) {
        app_.set_help_flag();
        app_.allow_extras();
        for (const std::vector<Flag>* flags : flags_of(command))
            for (const Flag& flag : *flags) add(flag);
    }

    Arguments parse(const std::vector<std::string>& given) {
        const auto flags_end = end_of_flags(given);
        std::vector<std::string> reversed = joined(command_, {given.begin(), flags_end});
        std::reverse(reversed.begin(), reversed.end());
        try {
            app_.parse(reversed);
        } catch (const CLI::ArgumentMismatch& mismatch) {
            throw UsageError("missing-value", mismatch.what(), see_help(command_));
        } catch (const CLI::ParseError& error) {
            throw UsageError("usage", error.what(), see_help(command_));
        }
        return sorted({flags_end == given.end() ? flags_end : flags_end + 1, given.end()});
    }

private:
    void add(const Flag& flag) {
        const std::string name(flag.name);
        if (flag.value.empty())
            app_.add_flag(name);
        else
            app_.add_option(name)->expected(1)->take_all()->allow_extra_args(false);
    }

    std::map<std::string, std::vector<std::string>> flags_given() const {
        std::map<std::string, std::vector<std::string>> flags;
        for (const CLI::Option* option : app_.get_options()) {
            if (option->count() == 0) continue;
            const Flag* flag = find_flag(command_, option->get_name());
            const std::string name(flag->instead.empty() ? flag->name : flag->instead);
            if (!flag->repeatable && (option->count() > 1 || flags.count(name) > 0))
                throw UsageError("repeated-flag", "'" + name + "' is given more than once", "give it once");
            flags[name] = flag->value.empty() ? std::vector<std::string>{} : option->results();
        }
        return flags;
    }

    /// `behind` are the words behind "--", which are no flags whatever they begin with.
    Arguments sorted(const std::vector<std::string>& behind) {
        std::map<std::string, std::vector<std::string>> flags = flags_given();
        std::vector<std::string> words = app_.remaining();
        for (const std::string& word : words)
            if (word.size() > 1 && word.front() == '-') refuse_unknown(command_, word);
        words.insert(words.end(), behind.begin(), behind.end());
        join_amount(words);
        check_count(words);
        Arguments arguments(std::move(words), std::move(flags));
        std::vector<std::string> order;
        for (const CLI::Option* option : app_.parse_order()) order.push_back(option->get_name());
        arguments.know_order(std::move(order));
        return arguments;
    }

    /// "1.5 kg" and "2 packs" without quotes, where an amount is the last word of the command.
    void join_amount(std::vector<std::string>& words) const {
        const std::size_t most = command_.words.size();
        if (most == 0 || command_.words.back().name != "AMOUNT" || words.size() <= most) return;
        std::string amount;
        for (std::size_t i = most - 1; i < words.size(); ++i) amount += (amount.empty() ? "" : " ") + words[i];
        std::string_view unit = amount;
        const bool packs = take_number(unit) && (trimmed(unit) == "pack" || trimmed(unit) == "packs");
        if (!packs && !measured_in(amount)) return;
        words.resize(most - 1);
        words.push_back(std::move(amount));
    }

    void check_count(const std::vector<std::string>& words) const {
        std::size_t least = 0, most = 0;
        bool endless = false;
        for (const Word& word : command_.words) {
            least += word.required ? 1 : 0;
            ++most;
            endless = endless || word.repeatable;
        }
        if (words.size() < least)
            throw UsageError(
                "missing-word",
                "'" + std::string(command_.verb) + "' needs " + std::string(command_.words[words.size()].name) + ": " +
                    std::string(command_.words[words.size()].help),
                examples(command_).empty() ? see_help(command_) : "for example: " + examples(command_).front());
        if (!endless && words.size() > most)
            refuse_surplus(command_, {words.begin() + static_cast<std::ptrdiff_t>(most), words.end()});
    }

    const CommandSpec& command_;
    CLI::App app_;
};

}  // namespace

Arguments parse_arguments(const CommandSpec& command, const std::vector<std::string>& given) {
    return Parser(command).parse(given);
}

}  // namespace baitwright
