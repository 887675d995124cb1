#pragma once

#include <filesystem>
#include <future>
#include <string>

#include "quantities/fault.h"
#include "store/file_in_making.h"
#include "store/store.h"

namespace baitwright {

/// A copy of another store, whole, of this program's version, to be brought into one. It lies beside that one, and goes
/// with this; the other is only read.
class OtherStore {
public:
    /// Throws NotFound "no-store"; StorageError for what is no store, is damaged or of a newer program, or cannot be
    /// copied.
    OtherStore(const std::filesystem::path& other, const std::filesystem::path& store);

    /// Waits until SQLite has looked through all of it, which it does meanwhile. Throws StorageError "damaged-store".
    void refuse_damaged();
    /// The same, and throws what else was met on the way, under this store's name where it was met in the copy.
    [[noreturn]] void refuse_damaged(const StorageError& met);

    Store& store() { return store_; }
    [[nodiscard]] const std::filesystem::path& path() const { return made_.path(); }

private:
    std::filesystem::path other_;
    FileInMaking made_;
    Store store_;
    std::shared_future<std::string> broken_;  ///< the last to be made and the first to go: it reads the file
};

}  // namespace baitwright
