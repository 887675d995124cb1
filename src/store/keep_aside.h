#pragma once

#include <filesystem>
#include <string>
#include <utility>

#include "quantities/date.h"

namespace baitwright {

/// What stood in a store's place before something was done to it, as `NAME.before-restore-YYYY-MM-DD`, `-2` and so on.
/// It goes again where that does not come about.
class KeptAside {
public:
    /// `before` what: "restore".
    explicit KeptAside(std::string before) : before_(std::move(before)) {}
    ~KeptAside();
    KeptAside(const KeptAside&) = delete;
    KeptAside& operator=(const KeptAside&) = delete;
    KeptAside(KeptAside&&) = delete;
    KeptAside& operator=(KeptAside&&) = delete;

    /// Copies the store as it is now. Throws SQLite::Exception and StorageError.
    void copy(const std::filesystem::path& store, Date today);
    /// Gives a file that SQLite cannot open a second name, byte for byte, and takes its log away from its first one.
    void link_damaged(const std::filesystem::path& store, Date today);

    /// Copies a file that SQLite cannot read, byte for byte, with its log.
    void copy_damaged(const std::filesystem::path& store, Date today);

    /// It stays, and this is its name.
    std::filesystem::path keep();

private:
    template <class Take>
    std::filesystem::path first_free(const std::filesystem::path& store, Date today, Take&& take) const;

    std::string before_;
    std::filesystem::path path_;
    std::filesystem::path moved_from_;  ///< whose log was taken away; empty for a copy
};

}  // namespace baitwright
