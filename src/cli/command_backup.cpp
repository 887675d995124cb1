#include "cli/commands.h"
#include "cli/result_formats.h"
#include "cli/store_file.h"
#include "files/new_name.h"
#include "questions/read_flags.h"
#include "report/kept_store_report.h"
#include "store/back_up_store.h"

namespace baitwright {

namespace {

CommandResult run_backup(const Arguments& arguments, const Surroundings& around) {
    BackupOrder order;
    order.store = store_file(around);
    order.target = arguments.words().front();
    order.today = around.today;
    if (order.target.empty())
        throw UsageError("no-file", "a backup needs a name, or a folder", "for example: baitwright backup stick");
    if (arguments.has("--replace")) order.standing = FileInMaking::Standing::replaced;
    if (arguments.has("--dry-run")) order.doing = Doing::looked_at;
    const bool folder = means_a_folder(order.target);
    if (!folder) order.target = behind_links(order.target);
    if (const auto keep = arguments.value("--keep"))
        order.keep =
            static_cast<std::size_t>(flag_value("--keep", [&] { return read_count(*keep, "for example --keep 10"); }));
    if (order.keep && !folder)
        throw UsageError("unfit-flag", "--keep goes with a folder of backups, and this is a file",
                         "name the folder, or leave --keep out");
    if (arguments.has("--replace") && folder)
        throw UsageError("unfit-flag", "--replace goes with a file; in a folder each backup has a name of its own",
                         "leave --replace out; --keep 10 takes away the oldest");
    BackupAnswer answer = back_up(order);
    std::string back = command_to_restore(arguments, answer.file);
    return given(arguments, backup_reply(std::move(answer), std::move(back)));
}

}  // namespace

CommandSpec command_backup() {
    return {"backup",
            "all that you keep, copied whole and checked, into one file",
            {{"FILE", "what the backup is called; or a folder, for one by today's date"}},
            {{"--keep", "NUMBER", "in a folder: take the oldest away, but for so many"},
             {"--replace", "", "write over a file that is there"},
             {"--dry-run", "", "show what it would do, and do nothing"}},
            run_backup,
            "baitwright backup stick --keep 10\nbaitwright backup my-bait.db",
            Effect::keeps};
}

}  // namespace baitwright
