#include "cli/add_file.h"
#include "cli/commands.h"
#include "cli/result_formats.h"
#include "cli/run_editor.h"
#include "files/disk.h"
#include "library/own_entries.h"
#include "quantities/in_quotes.h"
#include "questions/read_flags.h"
#include "report/change_report.h"
#include "report/replies.h"

namespace baitwright {

namespace {

/// What is said in the help of the commands of a kind; a `string_view` must live as long as the program.
struct KindWords {
    std::string_view word;
    std::string_view copy, rename, remove, restore, edit;
    std::string_view copy_example, rename_example, remove_example, restore_example, edit_example;
};

#define BAITWRIGHT_TWO(KIND, VERB, FIRST, SECOND) \
    "baitwright " KIND " " VERB " " FIRST "\nbaitwright " KIND " " VERB " " SECOND
#define BAITWRIGHT_KIND_WORDS(WORD, KIND, SOME, NAME)                                                             \
    {                                                                                                             \
        WORD, "one of your own, begun as a copy of " SOME, "another name for " SOME "; all that uses it follows", \
            "take " SOME " out of the library; it is kept, and can be had back",                                  \
            "an older version of " SOME ", or one that was removed, as it is now again",                          \
            "change " SOME " in your editor; it is checked when you leave",                                       \
            BAITWRIGHT_TWO(KIND, "copy", "\"" NAME "\" --as \"best " NAME "\"",                                   \
                           "\"my " NAME "\" --as \"cold " NAME "\""),                                             \
            BAITWRIGHT_TWO(KIND, "rename", "\"my " NAME "\" --as \"our " NAME "\"",                               \
                           "\"" NAME "\" --as \"our " NAME "\""),                                                 \
            BAITWRIGHT_TWO(KIND, "remove", "\"my " NAME "\"", "\"my " NAME "\" --json"),                          \
            BAITWRIGHT_TWO(KIND, "restore", "\"old " NAME "\"", "\"old " NAME "\" --version 1"),                  \
            BAITWRIGHT_TWO(KIND, "edit", "\"my " NAME "\"", "\"" NAME "\"")                                       \
    }

constexpr std::array<KindWords, 5> kind_words{{
    BAITWRIGHT_KIND_WORDS("INGREDIENT", "ingredient", "an ingredient", "brown crumb"),
    BAITWRIGHT_KIND_WORDS("RECIPE", "recipe", "a mix", "silt bed"),
    BAITWRIGHT_KIND_WORDS("STRATEGY", "strategy", "a strategy", "open carpet"),
    BAITWRIGHT_KIND_WORDS("VENUE", "venue", "a venue", "long pit"),
    BAITWRIGHT_KIND_WORDS("BLEND", "blend", "a blend", "club sack"),
}};
#undef BAITWRIGHT_KIND_WORDS
#undef BAITWRIGHT_TWO

std::string command_of(EntryKind kind, const char* verb) {
    return command_word(kind) + " " + verb;
}

const std::string& asked_name(const Arguments& arguments) {
    return arguments.words().front();
}

std::string name_given(const Arguments& arguments, EntryKind kind, const char* verb) {
    const auto as = arguments.value("--as");
    if (!as)
        throw UsageError("no-name", "what is the new name?",
                         "say it as in: baitwright " + command_of(kind, verb) + " \"" + asked_name(arguments) +
                             R"(" --as "my own")");
    return *as;
}

template <EntryKind kind>
CommandResult copy_own(const Arguments& arguments, const Surroundings& around) {
    refuse_folder(around);
    const std::string as = name_given(arguments, kind, "copy");
    Store store = open_store(around.library);
    return given(arguments, change_reply(command_of(kind, "copy"),
                                         names_of({copy_entry(store, kind, asked_name(arguments), as, around.today)})));
}

template <EntryKind kind>
CommandResult rename_own(const Arguments& arguments, const Surroundings& around) {
    refuse_folder(around);
    const std::string as = name_given(arguments, kind, "rename");
    Store store = open_store(around.library);
    const Renamed done = rename_entry(store, kind, asked_name(arguments), as);
    std::vector<std::string> followed;
    for (const NamedEntry& user : done.followed)
        followed.push_back("the " + std::string(name_of(user.kind)) + " " + in_quotes(user.name));
    if (done.in_shed) followed.emplace_back("the shed");
    return given(arguments, renamed_reply(command_of(kind, "rename"),
                                          {std::string(name_of(kind)), done.from, done.to, std::move(followed)}));
}

template <EntryKind kind>
CommandResult remove_own(const Arguments& arguments, const Surroundings& around) {
    refuse_folder(around);
    Store store = open_store(around.library);
    const std::string name = remove_entry(store, kind, asked_name(arguments), around.today);
    return given(arguments, removed_reply(command_of(kind, "remove"), std::string(name_of(kind)), name,
                                          "baitwright " + command_of(kind, "restore") + " \"" + name + "\""));
}

template <EntryKind kind>
CommandResult restore_own(const Arguments& arguments, const Surroundings& around) {
    refuse_folder(around);
    std::optional<std::size_t> version;
    read_flag(arguments, "--version", [&](const std::string& text) {
        version = static_cast<std::size_t>(read_count(text, "they are numbered from 1, the oldest"));
    });
    Store store = open_store(around.library);
    const Restored done = restore_entry(store, kind, asked_name(arguments), version, around.today);
    return given(arguments, restored_reply(command_of(kind, "restore"),
                                           {std::string(name_of(kind)), done.name, done.until, done.version, done.of,
                                            names_of({{done.name, done.change}}).front().what}));
}

/// What went wrong with the edited text is told with where that text is: it is not lost.
[[noreturn]] void rethrow_with_file(const Error& error, EntryKind kind, const std::string& path) {
    std::vector<Fault> faults = error.faults();
    faults.back().hint +=
        (faults.back().hint.empty() ? "" : "; ") + ("nothing was changed, and your text is kept: mend " + path +
                                                    " and type: baitwright " + command_of(kind, "add") + " " + path);
    throw Error(error.fault_class(), std::move(faults));
}

template <EntryKind kind>
CommandResult edit_own(const Arguments& arguments, const Surroundings& around) {
    refuse_folder(around);
    std::string name, before;
    {
        const Store store = open_store(around.library);  // closed while the person edits
        name = known_name(store, kind, asked_name(arguments));
        before = text_of_entry(store, kind, name);
    }
    const std::filesystem::path path = file_to_edit(name, before);
    run_editor(path);
    std::vector<EntryChange> changes;
    try {
        const std::string text = read_text_file(path);
        Store store = open_store(around.library);
        if (text == before)
            changes.push_back({name, EntryChange::Kind::unchanged, std::string(name_of(kind))});
        else
            changes = put_edited(store, kind, name, text, before, path.string(), around.today);
    } catch (const Error& error) {
        rethrow_with_file(error, kind, path.string());
    }
    std::error_code failed;
    std::filesystem::remove(path, failed);
    return given(arguments, change_reply(command_of(kind, "edit"), names_of(changes)));
}

template <EntryKind kind>
void add_commands(std::vector<CommandSpec>& commands) {
    static const std::array<std::string, 5> verbs{command_of(kind, "copy"), command_of(kind, "rename"),
                                                  command_of(kind, "remove"), command_of(kind, "restore"),
                                                  command_of(kind, "edit")};
    const KindWords& words = kind_words.at(static_cast<std::size_t>(kind));
    const std::vector<Word> name{{words.word, "its name"}};
    const Flag as{"--as", "NAME", "the new name"};
    commands.push_back({verbs[0], words.copy, name, {as}, copy_own<kind>, words.copy_example, Effect::stores});
    commands.push_back({verbs[1], words.rename, name, {as}, rename_own<kind>, words.rename_example, Effect::stores});
    commands.push_back({verbs[2], words.remove, name, {}, remove_own<kind>, words.remove_example, Effect::stores});
    commands.push_back({verbs[3],
                        words.restore,
                        name,
                        {{"--version", "NUMBER", "which, as numbered by 'show --old' (default: the newest)"}},
                        restore_own<kind>,
                        words.restore_example,
                        Effect::stores});
    commands.push_back({verbs[4], words.edit, name, {}, edit_own<kind>, words.edit_example, Effect::stores});
}

}  // namespace

std::vector<CommandSpec> commands_of_own_entries(EntryKind kind) {
    std::vector<CommandSpec> commands;
    switch (kind) {
        case EntryKind::ingredient:
            add_commands<EntryKind::ingredient>(commands);
            break;
        case EntryKind::mix:
            add_commands<EntryKind::mix>(commands);
            break;
        case EntryKind::strategy:
            add_commands<EntryKind::strategy>(commands);
            break;
        case EntryKind::venue:
            add_commands<EntryKind::venue>(commands);
            break;
        case EntryKind::blend:
            add_commands<EntryKind::blend>(commands);
            break;
    }
    return commands;
}

}  // namespace baitwright
