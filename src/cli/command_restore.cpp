#include "cli/commands.h"
#include "cli/result_formats.h"
#include "cli/store_file.h"
#include "report/kept_store_report.h"
#include "store/restore_store.h"

namespace baitwright {

namespace {

CommandResult run_restore(const Arguments& arguments, const Surroundings& around) {
    const std::filesystem::path store = store_file(around);
    const std::string& file = arguments.words().front();
    const Doing doing = arguments.has("--dry-run") ? Doing::looked_at : Doing::done;
    const StoreRestored done = restore_store({file, store, around.today, doing});
    const std::string aside = done.kept_aside.string();
    return given(arguments, restore_reply({doing, file, done.contents, done.brought_from, store.string(), aside},
                                          command_to_restore(arguments, aside)));
}

}  // namespace

CommandSpec command_restore() {
    return {"restore",
            "puts a backup in place of the store; what was there is kept beside it",
            {{"FILE", "the backup"}},
            {{"--dry-run", "", "check it, and change nothing"}},
            run_restore,
            "baitwright restore bait-before-the-move.db\n"
            "baitwright restore bait-before-the-move.db --dry-run",
            Effect::keeps};
}

}  // namespace baitwright
