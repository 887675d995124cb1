#include "cli/commands.h"

#include "cli/add_file.h"
#include "cli/checked.h"
#include "cli/old_versions.h"
#include "cli/result_formats.h"
#include "files/library_text.h"
#include "library/named.h"
#include "library/searched.h"
#include "report/entry_replies.h"

namespace baitwright {

namespace {

CommandResult list_venues(const Arguments& arguments, const Surroundings& around) {
    return given(arguments, venue_list_reply(those_with(arguments.words(), all_venues(around.library))));
}

CommandResult show_venue(const Arguments& arguments, const Surroundings& around) {
    if (arguments.has("--old")) return old_versions(arguments, around, EntryKind::venue);
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Venue venue = named_venue(arguments.words().front(), around.library, *shelf).value;
    if (arguments.has("--toml")) return as_toml(arguments, toml_text(venue));
    return given(arguments, venue_reply(venue));
}

CommandResult check_venue(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    return checked(arguments, "venue", [&](const std::string& given) {
        static_cast<void>(named_venue(given, around.library, *shelf));
        return std::vector<Warning>{};
    });
}

CommandResult add_venue(const Arguments& arguments, const Surroundings& around) {
    return add_file(arguments, around, EntryKind::venue, arguments.words().front());
}

const Word venue_word{"VENUE", "the venue: its name, a TOML file, or - for standard input"};

}  // namespace

CommandSpec command_venue_list() {
    return {"venue list",
            "the waters whose rules you have written down; two are there to show how",
            {{"WORD", "only those with these words in name or rules", true, false}},
            {},
            list_venues,
            "baitwright venue list\nbaitwright venue list --json"};
}

CommandSpec command_venue_show() {
    return {"venue show", "the rules of a water as they are written down",
            {venue_word}, show_flags(),
            show_venue,   R"(baitwright venue show "long pit"
baitwright venue show my-water.toml)"};
}

CommandSpec command_venue_check() {
    return {"venue check", "everything that is wrong with a file of rules", {venue_word}, {},
            check_venue,   R"(baitwright venue check my-water.toml
baitwright venue check "long pit")"};
}

CommandSpec command_venue_add() {
    return {"venue add",
            "add the rules of a water, and all else that the file holds; old versions are kept",
            {{"FILE", "ending in .toml, or - for standard input"}},
            {},
            add_venue,
            "baitwright venue add my-water.toml\nbaitwright venue add - < my-water.toml",
            Effect::stores};
}

}  // namespace baitwright
