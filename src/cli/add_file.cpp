#include "cli/add_file.h"

#include "cli/result_formats.h"
#include "files/disk.h"
#include "files/ingredient_csv.h"
#include "library/all_faults.h"
#include "library/change_library.h"
#include "library/own_entries.h"
#include "report/replies.h"

namespace baitwright {

namespace {

struct Wanted {
    const char* code;
    const char* message;
    const char* hint;
};

/// What is said of a file without one of the kind.
constexpr std::array<Wanted, 5> wanted_of_kind{{
    {"nothing-here", "there is no ingredient in this file", "an ingredient has a name, a kind and a loose_density"},
    {"no-mix", "the file holds no mix", "a mix has a name and at least one [[part]]"},
    {"no-strategy", "the file holds no strategy", "a strategy has a name, a length and at least one [[feed]]"},
    {"no-venue", "the file holds no venue", "a venue has a name and at least one [[limit]], [[ban]] or [[rule]]"},
    {"no-blend", "the file holds no blend", "a blend has a name and at least one [[candidate]]"},
}};

bool holds(const LibraryFile& file, EntryKind kind) {
    switch (kind) {
        case EntryKind::ingredient:
            return !file.ingredients.empty();
        case EntryKind::mix:
            return !file.recipes.empty();
        case EntryKind::strategy:
            return !file.strategies.empty();
        case EntryKind::venue:
            return !file.venues.empty();
        case EntryKind::blend:
            break;
    }
    return !file.blends.empty();
}

/// The command that takes what the file holds in place of the kind that was asked for; empty where it holds nothing.
std::string other_command(const LibraryFile& file, const std::string& path) {
    for (const EntryKind kind :
         {EntryKind::mix, EntryKind::strategy, EntryKind::ingredient, EntryKind::venue, EntryKind::blend})
        if (holds(file, kind)) return "what is in it is added with: baitwright " + command_word(kind) + " add " + path;
    return {};
}

}  // namespace

void refuse_folder(const Surroundings& around) {
    if (around.library.folder)
        throw UsageError("unfit-flag", "--library reads a folder and changes nothing",
                         "leave it out, to change the store");
}

CommandResult add_file(const Arguments& arguments, const Surroundings& around, EntryKind kind,
                       const std::string& path) {
    refuse_folder(around);
    Store store = open_store(around.library);
    const std::string text = read_text_file(path), name = path == "-" ? "standard input" : path;
    LibraryFile file = path.ends_with(".csv") ? read_ingredient_csv(text, name) : read_library_file(text, name);
    if (!file.faults.empty()) throw InputError(all_faults(file, text, store));
    if (!holds(file, kind)) {
        const Wanted& wanted = wanted_of_kind.at(static_cast<std::size_t>(kind));
        const std::string other = other_command(file, path);
        throw InputError(fault_of_file(wanted.code, wanted.message, other.empty() ? wanted.hint : other, name));
    }
    return given(arguments,
                 change_reply(command_word(kind) + " add", names_of(put_file(store, file, text, around.today))));
}

}  // namespace baitwright
