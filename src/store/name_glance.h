#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

#include "bait/entry_kind.h"

namespace SQLite {
class Database;
}

namespace baitwright {

/// A name that a store holds, and a word that tells it from others: an ingredient's kind, a mix's feel.
struct GlancedName {
    std::string name, says;
};

/// A glance at the names of a store, for somebody who is typing one: nothing is made, written or brought up to date, no
/// lock is taken that another process would wait for, and none is waited for. What others write at that moment may be
/// missed. Each throws StorageError for a file that is no store, is damaged, or lacks that table.
class NameGlance {
public:
    explicit NameGlance(const std::filesystem::path& path);
    ~NameGlance();
    NameGlance(NameGlance&&) noexcept;

    /// In the order of the names.
    [[nodiscard]] std::vector<GlancedName> names(EntryKind kind) const;
    /// Those that had an older version: some may still be there.
    [[nodiscard]] std::vector<GlancedName> retired(EntryKind kind) const;
    /// From the driest to the wettest.
    [[nodiscard]] std::vector<GlancedName> feels() const;
    [[nodiscard]] std::vector<GlancedName> shops() const;

private:
    [[nodiscard]] std::vector<GlancedName> asked(const std::string& sql) const;

    std::filesystem::path path_;
    std::unique_ptr<SQLite::Database> database_;
};

}  // namespace baitwright
