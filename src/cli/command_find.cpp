#include "cli/commands.h"

#include "cli/result_formats.h"
#include "library/searched.h"
#include "report/find_report.h"

namespace baitwright {

namespace {

CommandResult run_find(const Arguments& arguments, const Surroundings& around) {
    return given(arguments, find_reply(find_entries(arguments.words(), all_searched(around.library))));
}

}  // namespace

CommandSpec command_find() {
    return {"find",
            "everything with these words in its name, kind, colour or notes",
            {{"WORD", "part of a name, a colour, a fish; all the words must fit", true}},
            {{"--csv", "", "as CSV for a spreadsheet"}},
            run_find,
            "baitwright find micro pellet\nbaitwright find bream"};
}

}  // namespace baitwright
