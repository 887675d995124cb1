#include "cli/old_versions.h"

#include "cli/result_formats.h"
#include "report/change_report.h"

namespace baitwright {

CommandResult old_versions(const Arguments& arguments, const Surroundings& around, const std::string& kind) {
    if (around.library.folder)
        throw UsageError("unfit-flag", "a folder read with --library keeps no old versions", "leave it out");
    const std::string& name = arguments.words().front();
    const Store store = open_store(around.library.store);
    const bool mix = kind == "mix", strategy = kind == "strategy";
    const std::string known = mix        ? store.recipe(name).name
                              : strategy ? store.strategy(name).name
                                         : store.ingredient(name).name;
    std::vector<OldVersion> versions;
    for (const RetiredEntry& entry : store.retired(kind, known)) versions.push_back({entry.retired_on, entry.text});
    const std::string command = (mix ? "recipe" : kind) + " show";
    return given(arguments, {0, [&] { return old_versions_told(known, versions); },
                             [&] { return old_versions_json(command, known, versions); }});
}

}  // namespace baitwright
