#include "cli/commands.h"

#include "cli/checked.h"
#include "cli/result_formats.h"
#include "library/named.h"
#include "report/entry_replies.h"

namespace baitwright {

namespace {

CommandResult list_venues(const Arguments& arguments, const Surroundings& around) {
    const std::vector<Venue> venues = all_venues(around.library);
    return given(arguments, venue_list_reply(std::move(venues)));
}

CommandResult show_venue(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    const Venue venue = named_venue(arguments.words().front(), around.library, *shelf).value;
    return given(arguments, venue_reply(venue));
}

CommandResult check_venue(const Arguments& arguments, const Surroundings& around) {
    const std::unique_ptr<Shelf> shelf = open_library(around.library);
    return checked(arguments, "venue", [&](const std::string& given) {
        static_cast<void>(named_venue(given, around.library, *shelf));
        return std::vector<Warning>{};
    });
}

const Word venue_word{"VENUE", "the venue: its name, a TOML file, or - for standard input"};

}  // namespace

CommandSpec command_venue_list() {
    return {"venue list", "the waters whose rules are shipped, to show how they are written",
            {},           {},
            list_venues,  "baitwright venue list\nbaitwright venue list --json"};
}

CommandSpec command_venue_show() {
    return {"venue show", "the rules of a water as they are written down",
            {venue_word}, {},
            show_venue,   R"(baitwright venue show "long pit"
baitwright venue show my-water.toml)"};
}

CommandSpec command_venue_check() {
    return {"venue check", "everything that is wrong with a file of rules", {venue_word}, {},
            check_venue,   R"(baitwright venue check my-water.toml
baitwright venue check "long pit")"};
}

}  // namespace baitwright
