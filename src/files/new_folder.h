#pragma once

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "quantities/unfinished_names.h"

namespace baitwright {

/// A folder of files that is made beside where it is to stand, so that it is there whole or not at all. It goes unless
/// it takes its place. For its owner alone, files and all.
class NewFolder {
public:
    /// Throws StorageError "cannot-create": the folder's own folder is not there, or not to be written.
    explicit NewFolder(std::filesystem::path target);
    ~NewFolder();
    NewFolder(const NewFolder&) = delete;
    NewFolder& operator=(const NewFolder&) = delete;
    NewFolder(NewFolder&&) = delete;
    NewFolder& operator=(NewFolder&&) = delete;

    /// Begins a file; what is added goes there, until the next begins. Throws StorageError "write-failed".
    void begin(const std::string& name);
    void add(std::string_view text);

    /// Flushes all of it, and takes the target's place: where there is nothing, an empty folder, or one that may be
    /// replaced, which goes as a whole.
    void take_place();

private:
    void write_out();
    void flush_files();

    std::filesystem::path target_, path_;
    std::optional<UnfinishedName> unfinished_;
    struct File {
        std::filesystem::path path;  ///< as it will be
        int number;
    };
    std::vector<File> files_;  ///< open until all are flushed: the disk takes them together in a fraction of the time
    std::string unwritten_;
};

/// The target, by its full name and behind links. Throws StorageError "not-a-folder", "folder-in-use" (the one that
/// this process works in), or "folder-not-empty" where it holds anything but files of these names and `sign`, a
/// file that an earlier folder of the kind has, and whose text says so.
std::filesystem::path folder_to_replace(const std::filesystem::path& target, const std::vector<std::string>& names,
                                        const std::string& sign, const std::function<bool(std::string_view)>& says_so);

}  // namespace baitwright
