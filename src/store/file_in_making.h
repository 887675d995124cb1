#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "quantities/unfinished_names.h"

namespace baitwright {

/// A file of a store that is made beside where it is to stand, `.baitwright-PID-N.new`, so that what is not whole is
/// never in place. It goes, with what SQLite keeps beside it, unless it was put in place.
class FileInMaking {
public:
    /// Makes it, empty, for its owner alone. Throws StorageError "cannot-create".
    explicit FileInMaking(const std::filesystem::path& folder);
    ~FileInMaking();
    FileInMaking(const FileInMaking&) = delete;
    FileInMaking& operator=(const FileInMaking&) = delete;
    FileInMaking(FileInMaking&&) = delete;
    FileInMaking& operator=(FileInMaking&&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

    /// Has the disk begin to write what is in it, while it is looked at.
    void begin_flush() const;

    enum class Standing { kept, replaced };
    /// Flushes it to the disk and gives it the name, in the same folder; false where a file stands there that is to be
    /// kept. No SQLite may have it open. Throws StorageError, as `refuse_log_of_another` does.
    [[nodiscard]] bool put_in_place(const std::filesystem::path& target, Standing standing);

private:
    std::filesystem::path path_;
    std::vector<std::unique_ptr<UnfinishedName>> unfinished_;  ///< it, and what SQLite keeps beside it
    bool in_place_ = false;
};

/// Refuses a name that nothing has, where what was last written to a store of that name still lies beside it: SQLite
/// would write that into whatever takes the place. Throws StorageError "log-without-store".
void refuse_log_of_another(const std::filesystem::path& target);

/// What runs that were killed left of such files in the folder: no process of their number is alive, or it is this one
/// and makes no such file now.
std::vector<std::filesystem::path> left_in_making(const std::filesystem::path& folder);

/// Takes it away.
void sweep_left_in_making(const std::filesystem::path& folder);

/// Flushes a name given or taken in the folder to the disk, where that can be done.
void flush_folder(const std::filesystem::path& folder);

/// The folder that a file of that name stands in.
std::filesystem::path folder_of_file(const std::filesystem::path& path);

}  // namespace baitwright
