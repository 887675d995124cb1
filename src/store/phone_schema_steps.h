#pragma once

/// What version 7 of the store's tables adds to the one before. It is never changed.
namespace baitwright {

// The entries of the shed that came with notes of a phone, by the phone's own mark: each comes once. `entry_id` is null
// where a count found nothing of what the shed never held.
inline constexpr const char* version_7 = R"sql(
CREATE TABLE stock_from_notes (
    mark TEXT PRIMARY KEY,
    entry_id INTEGER REFERENCES stock_entry
) STRICT, WITHOUT ROWID;
)sql";

}  // namespace baitwright
