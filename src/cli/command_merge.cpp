#include "cli/commands.h"
#include "cli/result_formats.h"
#include "cli/store_file.h"
#include "library/merge_store.h"
#include "library/open_library.h"
#include "report/merge_report.h"

namespace baitwright {

namespace {

CommandResult run_merge(const Arguments& arguments, const Surroundings& around) {
    const std::string& file = arguments.words().front();
    if (file.empty()) throw UsageError("no-file", "which store is to come in?", "name it: baitwright merge phone.db");
    Store store = open_store(store_file(around));
    const MergeDoing doing = arguments.has("--dry-run") ? MergeDoing::only_shown : MergeDoing::done;
    return given(arguments, merge_reply(merge_store(store, file, around.today, doing)));
}

}  // namespace

CommandSpec command_merge() {
    return {"merge",
            "brings another store into yours: all that either has, once",
            {{"FILE", "the other store, or a backup of it"}},
            {{"--dry-run", "", "say what would come in, and change nothing"}},
            run_merge,
            "baitwright merge boat.db\n"
            "baitwright merge boat.db --dry-run",
            Effect::keeps};
}

}  // namespace baitwright
