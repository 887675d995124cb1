#pragma once

#include <sys/types.h>

#include <filesystem>
#include <string>

namespace baitwright {

/// What a new file or folder beside the target is called: ".NAME.PID-0.new", NAME cut where that would be longer than a
/// name can be.
class NewName {
public:
    explicit NewName(const std::filesystem::path& target)
        : front_("." + target.filename().string().substr(0, 200) + ".") {}

    [[nodiscard]] std::string text(pid_t process, int attempt) const;
    /// The process that such a file is of; 0 where it is none.
    [[nodiscard]] pid_t process_of(const std::string& name) const;

private:
    std::string front_;
};

/// Takes away what runs that were killed left of the same target: no such process is alive.
void sweep_leftovers(const std::filesystem::path& folder, const NewName& name);

/// The folder that a path stands in.
std::filesystem::path folder_of(const std::filesystem::path& path);

/// What a symbolic link points at, so that the link stays one.
std::filesystem::path behind_links(const std::filesystem::path& path);

}  // namespace baitwright
