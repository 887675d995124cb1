#include "cli/old_versions.h"

#include "cli/result_formats.h"
#include "library/own_entries.h"
#include "quantities/suggestion.h"
#include "report/change_report.h"

namespace baitwright {

CommandResult old_versions(const Arguments& arguments, const Surroundings& around, EntryKind kind) {
    if (around.library.folder)
        throw UsageError("unfit-flag", "a folder read with --library keeps no old versions", "leave it out");
    const std::string& name = arguments.words().front();
    const Store store = open_store(around.library);
    std::vector<RetiredEntry> kept = store.retired(name_of(kind), name);  // also of one that was removed
    const bool removed = !kept.empty() && !store.entries().find_name(kind, name);
    const std::string known = removed ? kept.back().name : known_name(store, kind, name);
    if (!removed) kept = store.retired(name_of(kind), known);
    std::vector<OldVersion> versions;
    versions.reserve(kept.size());
    for (const RetiredEntry& entry : kept) versions.push_back({entry.retired_on, entry.text});
    const std::string command = command_word(kind) + " show";
    return given(arguments, {0, [&] { return old_versions_told(known, versions); },
                             [&] { return old_versions_json(command, known, versions); }});
}

CommandResult as_toml(const Arguments& arguments, const std::string& text) {
    if (arguments.has("--json"))
        throw UsageError("two-formats", "--toml and --json were both given", "give one of them");
    return {text, 0};
}

std::vector<Flag> show_flags() {
    return {{"--old", "", "the versions that were replaced"},
            {"--toml", "", "as a file that 'add' takes back: to keep it, send it, or change it"}};
}

}  // namespace baitwright
