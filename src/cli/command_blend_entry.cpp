#include "cli/add_file.h"
#include "cli/checked.h"
#include "cli/commands.h"
#include "cli/old_versions.h"
#include "cli/result_formats.h"
#include "files/library_text.h"
#include "library/blend_names.h"
#include "library/named.h"
#include "library/searched.h"
#include "report/entry_replies.h"

namespace baitwright {

namespace {

CommandResult list_blends(const Arguments& arguments, const Surroundings& around) {
    return given(arguments, blend_list_reply(those_with(arguments.words(), all_blends(around.library))));
}

CommandResult show_blend(const Arguments& arguments, const Surroundings& around) {
    if (arguments.has("--old")) return old_versions(arguments, around, EntryKind::blend);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const BlendSpec blend = named_blend(arguments.words().front(), around.library, *shelf).value;
    if (arguments.has("--toml")) return as_toml(arguments, toml_text(blend));
    return given(arguments, blend_spec_reply(blend));
}

CommandResult check_blend(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    return checked(arguments, "blend", [&](const std::string& given) {
        const Named<BlendSpec> named = named_blend(given, around.library, *shelf);
        with_places(named, [&] {
            std::vector<Fault> unfit = unfit_candidates(named.value, named.shelf());
            if (!unfit.empty()) throw InputError(std::move(unfit));
        });
        return std::vector<Warning>{};
    });
}

CommandResult add_blend(const Arguments& arguments, const Surroundings& around) {
    return add_file(arguments, around, EntryKind::blend, arguments.words().front());
}

const Word blend_word{"BLEND", "the blend: its name, a TOML file, or - for standard input"};

}  // namespace

CommandSpec command_blend_list() {
    return {"blend list",
            "the questions of cheapest mixes that are written down",
            {{"WORD", "only those with these words in name or notes", true, false}},
            {},
            list_blends,
            "baitwright blend list\nbaitwright blend list --json"};
}

CommandSpec command_blend_show() {
    return {"blend show", "what a blend may hold, and within which limits",
            {blend_word}, show_flags(),
            show_blend,   "baitwright blend show \"club sack\"\nbaitwright blend show \"club sack\" --toml"};
}

CommandSpec command_blend_check() {
    return {"blend check", "everything that is wrong with a file of a blend",
            {blend_word},  {},
            check_blend,   "baitwright blend check my-blend.toml\nbaitwright blend check \"club sack\""};
}

CommandSpec command_blend_add() {
    return {"blend add",
            "add a blend, and all else that the file holds; old versions are kept",
            {{"FILE", "ending in .toml, or - for standard input"}},
            {},
            add_blend,
            "baitwright blend add my-blend.toml\nbaitwright blend add - < my-blend.toml",
            Effect::stores};
}

}  // namespace baitwright
