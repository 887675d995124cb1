#include "cli/commands.h"
#include "cli/result_formats.h"
#include "cli/store_file.h"
#include "library/export_all.h"
#include "quantities/in_quotes.h"
#include "report/export_report.h"

namespace baitwright {

namespace {

CommandResult run_export(const Arguments& arguments, const Surroundings& around) {
    const std::filesystem::path file = store_file(around);
    const std::string folder = arguments.value("--all").value_or("");
    if (folder.empty())
        throw UsageError("no-folder", "where is all of it to go?", "name a new folder: baitwright export --all kept");
    std::error_code failed;
    if (!std::filesystem::exists(file, failed))
        throw NotFound("no-store", "there is no store " + in_quotes(file.string()) + " yet, and nothing to take out",
                       "the first command that needs one makes it; of another: name it with --store FILE");
    const Store store = open_store(around.library);
    const Doing doing = arguments.has("--dry-run") ? Doing::looked_at : Doing::done;
    return given(arguments,
                 export_reply(export_all(store, folder, "baitwright " + around.version, around.today, doing)));
}

}  // namespace

CommandSpec command_export() {
    return {"export",
            "all that you keep, as files that you can read and change, into one folder",
            {},
            {{"--all", "FOLDER", "a new or an empty folder, or one from an export before"},
             {"--dry-run", "", "say what would be written, and write nothing"}},
            run_export,
            "baitwright export --all kept\nbaitwright export --all bait-2026 --json",
            Effect::keeps};
}

}  // namespace baitwright
