#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "library/open_library.h"
#include "questions/arguments.h"

namespace baitwright {

/// A flag of a command: "--wet-volume VOLUME", or a switch where `value` is empty. Every flag may be given once, but a
/// `repeatable` one as often as wanted.
struct Flag {
    std::string_view name;   ///< "--wet-volume"
    std::string_view value;  ///< what it takes, in capitals: "VOLUME"
    std::string_view help;
    bool repeatable = false;
    std::string_view usual = {};    ///< the key of what the person always uses that stands in where it is not given
    std::string_view instead = {};  ///< of a flag that is going: what to type in its place; help is silent about it
};

/// A word of a command that is not a flag.
struct Word {
    std::string_view name;  ///< "RECIPE"
    std::string_view help;
    bool repeatable = false;
    bool required = true;
};

/// What a command may know of the world around it: the library, the day, and which program this is. Nothing else in the
/// program asks the machine for these.
struct Surroundings {
    LibraryPlace library;
    Date today;
    std::string version;
};

/// What the output of a command is: words told to a person, which a terminal may dress; a long list of them, or help,
/// which may go through a pager; or as it is, for programs and files; or a file itself, byte for byte.
enum class OutputForm { as_it_is, told, listed, bytes };

/// What a command has to say and how it ended; nothing is printed before all of it is known.
struct CommandResult {
    std::string output;
    int status = 0;
    OutputForm form = OutputForm::as_it_is;
    std::string aside = {};                  ///< for the person, not part of the answer: a new store was made
    std::vector<std::string> unheeded = {};  ///< flags that were given what is usual, and had no bearing here
    std::string done_already = {};           ///< what stays done even where the output cannot be written; may be empty
};

/// Whether a command leaves something in the store, or only answers; or works on the store's file as a whole, which is
/// then not opened before it runs.
enum class Effect { answers, stores, keeps };

/// A command: what may follow it, and what it does. `run` throws the project's errors.
struct CommandSpec {
    std::string_view verb;  ///< "mix", "ingredient list"
    std::string_view summary;
    std::vector<Word> words;
    std::vector<Flag> flags;
    CommandResult (*run)(const Arguments&, const Surroundings&);
    std::string_view example;  ///< one or two that work, parted by a line break; the first is shown with errors
    Effect effect = Effect::answers;
};

/// Flags that every command takes.
const std::vector<Flag>& common_flags();

/// All commands, in the order in which help shows them.
const std::vector<CommandSpec>& all_commands();

}  // namespace baitwright
