#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>

#include "bait/kept_tables.h"

namespace baitwright {

class StoreConnection;

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

private:
    StoreConnection* connection_;
};

}  // namespace baitwright
