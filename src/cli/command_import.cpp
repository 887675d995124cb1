#include "cli/commands.h"
#include "cli/result_formats.h"
#include "cli/store_file.h"
#include "library/import_all.h"
#include "report/export_report.h"

namespace baitwright {

namespace {

CommandResult run_import(const Arguments& arguments, const Surroundings& around) {
    const std::filesystem::path store = store_file(around);
    const std::string& folder = arguments.words().front();
    if (folder.empty())
        throw UsageError("no-folder", "which folder is to be taken in?", "name it: baitwright import kept");
    const Doing doing = arguments.has("--dry-run") ? Doing::looked_at : Doing::done;
    return given(arguments, import_reply(import_all(store, folder, around.today, doing)));
}

}  // namespace

CommandSpec command_import() {
    return {"import",
            "takes in a folder that an export wrote, with what you changed in it",
            {{"FOLDER", "the folder"}},
            {{"--dry-run", "", "check it, say what would come in, and change nothing"}},
            run_import,
            "baitwright import kept\nbaitwright import kept --dry-run",
            Effect::keeps};
}

}  // namespace baitwright
