#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/kept_tables.h"
#include "store/stored_entry.h"

namespace baitwright {

class StoreConnection;

/// An entry of the library, and whose it is.
struct OwnedEntry {
    std::string kind;  ///< one of `entry_kind_names`, or "feel"
    std::string name;
    EntryOwner owner = EntryOwner::person;
};

/// What became of a row that was to be written.
struct KeptOutcome {
    enum class What {
        written,
        twice,       ///< a row like it is there already
        unknown,     ///< what `column` names is not there
        impossible,  ///< its values do not go together
    } what = What::written;
    std::size_t column = 0;
};

/// The rows of the tables that are kept (`bait/kept_tables.h`), as they stand in the store.
class KeptRows {
public:
    explicit KeptRows(StoreConnection& connection) : connection_(&connection) {}

    /// Calls `each` for all rows of a table, in the order in which they came about or of their names.
    void each(const KeptTable& table, const std::function<void(const KeptRow&)>& each) const;
    [[nodiscard]] std::int64_t count(const KeptTable& table) const;

    /// Writes a row under its own number; belongs inside `Store::change`.
    KeptOutcome write(const KeptTable& table, const KeptRow& row);

    /// All entries of the library, by kind and name.
    [[nodiscard]] std::vector<OwnedEntry> entries() const;
    /// The entries of the log that have not just the rows which their kind asks for, the first 20 of them.
    [[nodiscard]] std::vector<std::int64_t> unwhole_in_log() const;

    /// The clock by which changes are stamped (`stamp.h`).
    [[nodiscard]] std::int64_t clock() const;
    // Inside `Store::change` only.
    /// Nothing is stamped any more, and the clock stands there.
    void set_clock(std::int64_t clock);
    /// What is of that name has just changed, or just come to be.
    enum class Change { changed, new_there };
    void stamp_change(std::string_view kind, std::string_view name, Change change);

private:
    StoreConnection* connection_;
};

}  // namespace baitwright
