#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantities/fault.h"
#include "shelf/library.h"

namespace baitwright {

/// A flag of a command: "--wet-volume VOLUME", or a switch where `value` is empty. Every flag may be given once, but a
/// `repeatable` one as often as wanted.
struct Flag {
    std::string_view name;   ///< "--wet-volume"
    std::string_view value;  ///< what it takes, in capitals: "VOLUME"
    std::string_view help;
    bool repeatable = false;
};

/// A word of a command that is not a flag.
struct Word {
    std::string_view name;  ///< "RECIPE"
    std::string_view help;
    bool repeatable = false;
    bool required = true;
};

/// What a person typed, sorted: words in order, flags by name.
class Arguments {
public:
    Arguments(std::vector<std::string> words, std::map<std::string, std::vector<std::string>> flags)
        : words_(std::move(words)), flags_(std::move(flags)) {}

    [[nodiscard]] const std::vector<std::string>& words() const { return words_; }
    [[nodiscard]] bool has(const std::string& flag) const { return flags_.count(flag) > 0; }
    /// The flag's value, or nothing.
    [[nodiscard]] std::optional<std::string> value(const std::string& flag) const;
    /// Every value of a repeatable flag.
    [[nodiscard]] std::vector<std::string> values(const std::string& flag) const;

private:
    std::vector<std::string> words_;
    std::map<std::string, std::vector<std::string>> flags_;
};

/// What a command may know of the world around it: the library, and later the day and the clock. Nothing else in the
/// program asks the machine for these.
struct Surroundings {
    LibraryPlace library;
    std::string today;  ///< ISO 8601 date
};

/// What a command has to say and how it ended; nothing is printed before all of it is known.
struct CommandResult {
    std::string output;
    int status = 0;
};

/// A command: what may follow it, and what it does. `run` throws the project's errors.
struct CommandSpec {
    std::string_view verb;  ///< "mix", "ingredient list"
    std::string_view summary;
    std::vector<Word> words;
    std::vector<Flag> flags;
    CommandResult (*run)(const Arguments&, const Surroundings&);
    std::string_view example;
};

/// Flags that every command takes.
const std::vector<Flag>& common_flags();

/// All commands, in the order in which help shows them.
const std::vector<CommandSpec>& all_commands();

/// Turns an InputError of reading a flag's value into a UsageError that names the flag.
template <class Read>
auto flag_value(std::string_view flag, Read&& read) -> decltype(read()) {
    try {
        return read();
    } catch (const InputError& error) {
        std::vector<Fault> faults = error.faults();
        for (Fault& fault : faults) fault.message = std::string(flag) + ": " + fault.message;
        throw Error(FaultClass::usage, std::move(faults));
    }
}

}  // namespace baitwright
