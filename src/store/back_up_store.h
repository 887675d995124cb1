#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>

#include "answers/shared/kept_store.h"
#include "quantities/date.h"
#include "store/file_in_making.h"

namespace baitwright {

/// Copies the store into the file in the making, whoever writes meanwhile, checks the copy by SQLite's own means and
/// against what was copied, and seals it. The store is not changed, whatever its version. Throws NotFound "no-store",
/// and StorageError; `target` is how messages call the copy.
StoreContents back_up_into(FileInMaking& made, const std::filesystem::path& store, const std::filesystem::path& target);

struct BackupOrder {
    std::filesystem::path store;
    std::filesystem::path target;  ///< a file; or a folder, for a dated one in it (`dated_backups.h`)
    FileInMaking::Standing standing = FileInMaking::Standing::kept;  ///< of a file that is there
    std::optional<std::size_t> keep;  ///< in a folder: so many stay, from 1; the oldest beyond go
    Date today;
    Doing doing = Doing::done;
};

/// Whether that means a folder: one that is there, or is named with a slash at its end.
bool means_a_folder(const std::filesystem::path& target);

/// Makes the backup, or says what it would be. Throws as above, and UsageError "output-is-store", StorageError
/// "file-exists".
BackupAnswer back_up(const BackupOrder& order);

}  // namespace baitwright
