#include "cli/dry_run.h"

#include <algorithm>
#include <cstdlib>
#include <string>
#include <system_error>

#include "report/json.h"
#include "store/kept_changes.h"

namespace baitwright {

namespace {

namespace fs = std::filesystem;

constexpr Flag dry_run_flag{"--dry-run", "", "show what it would do, and write nothing"};

const Flag* own_flag(const CommandSpec& command, std::string_view name) {
    const auto flag =
        std::find_if(command.flags.begin(), command.flags.end(), [&](const Flag& each) { return each.name == name; });
    return flag == command.flags.end() ? nullptr : &*flag;
}

/// A folder of our own for a store that is to be forgotten.
fs::path folder_elsewhere() {
    std::error_code failed;
    const fs::path folder = fs::temp_directory_path(failed);
    std::string name = ((failed ? fs::path("/tmp") : folder) / "baitwright-XXXXXX").string();
    if (::mkdtemp(name.data()) == nullptr)
        throw StorageError(FaultClass::cannot_create, "cannot-create", "there is no place to try it in",
                           "make room, or name another folder with TMPDIR");
    return name;
}

}  // namespace

void add_dry_run(std::vector<CommandSpec>& commands) {
    for (CommandSpec& command : commands) {
        const bool changes = command.effect == Effect::stores || own_flag(command, "--book") != nullptr ||
                             own_flag(command, "--save") != nullptr;
        if (changes && own_flag(command, dry_run_flag.name) == nullptr) command.flags.push_back(dry_run_flag);
    }
}

DryRun::DryRun(const CommandSpec& command, const Arguments& arguments, fs::path& store) {
    const Flag* flag = own_flag(command, dry_run_flag.name);
    dry_ = flag != nullptr && flag->help == dry_run_flag.help && arguments.has("--dry-run");
    std::error_code failed;
    if (!dry_) return;
    if (store.empty() || fs::exists(store, failed)) {
        make_changes(Changes::undone);
        return;
    }
    elsewhere_ = folder_elsewhere();
    unfinished_ = std::make_unique<UnfinishedName>(elsewhere_.native());
    store = elsewhere_ / "tried.db";
}

DryRun::~DryRun() {
    std::error_code ignored;
    if (dry_) make_changes(Changes::kept);
    if (!elsewhere_.empty()) fs::remove_all(elsewhere_, ignored);
}

void DryRun::tell(CommandResult& result, const Arguments& arguments) const {
    if (!dry_) return;
    if (auto json = arguments.has("--json") ? parsed_json(result.output) : std::nullopt;
        json && json->contains("command")) {
        (*json)["dry_run"] = true;
        result.output = json_text(*json);
    } else if (result.form == OutputForm::told) {
        result.output += "\nNothing was written.\n";
    } else {
        result.aside += "note: nothing was written\n";
    }
}

}  // namespace baitwright
