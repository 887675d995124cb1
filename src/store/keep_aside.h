#pragma once

#include <filesystem>

#include "quantities/date.h"

namespace baitwright {

/// What stood in a store's place before a restore, as `NAME.before-restore-YYYY-MM-DD`. It goes again where the restore
/// does not come about.
class KeptAside {
public:
    KeptAside() = default;
    ~KeptAside();
    KeptAside(const KeptAside&) = delete;
    KeptAside& operator=(const KeptAside&) = delete;
    KeptAside(KeptAside&&) = delete;
    KeptAside& operator=(KeptAside&&) = delete;

    /// Copies the store as it is now. Throws SQLite::Exception and StorageError.
    void copy(const std::filesystem::path& store, Date today);
    /// Gives a file that SQLite cannot open a second name, byte for byte, and takes its log away from its first one.
    void link_damaged(const std::filesystem::path& store, Date today);

    /// It stays, and this is its name.
    std::filesystem::path keep();

private:
    std::filesystem::path path_;
    std::filesystem::path moved_from_;  ///< whose log was taken away; empty for a copy
};

}  // namespace baitwright
