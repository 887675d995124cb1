#pragma once

#include <filesystem>
#include <memory>
#include <vector>

#include "cli/command.h"
#include "quantities/unfinished_names.h"

namespace baitwright {

/// Gives `--dry-run` to every command that changes the store and has none of its own.
void add_dry_run(std::vector<CommandSpec>& commands);

/// One run that is only tried, while it lives: the command does all that it does, and all of it is undone. A store that
/// is not there yet is made elsewhere, and goes with it.
class DryRun {
public:
    /// Does nothing unless the flag is given. `store` may be given another place.
    DryRun(const CommandSpec& command, const Arguments& arguments, std::filesystem::path& store);
    ~DryRun();
    DryRun(const DryRun&) = delete;
    DryRun& operator=(const DryRun&) = delete;

    /// That nothing was written, in the form of the answer.
    void tell(CommandResult& result, const Arguments& arguments) const;

private:
    bool dry_ = false;
    std::filesystem::path elsewhere_;
    std::unique_ptr<UnfinishedName> unfinished_;
};

}  // namespace baitwright
