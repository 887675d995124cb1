#pragma once

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "bait/entry_kind.h"
#include "bait/log_entry.h"
#include "store/query.h"

/// Rows of the log's tables as entries, and back. Words that mean nothing can only come from damage.
namespace baitwright {

/// Entries by their numbers, from first to last.
struct LogSpan {
    std::int64_t first = 0, last = std::numeric_limits<std::int64_t>::max();
};

/// All of them with numbers in the span, rising, with those that were taken back. An entry that stands with a number
/// outside its range throws StorageError "stored-out-of-range"; one that was taken back loses its numbers.
std::vector<LogEntry> read_entries(StoreConnection& connection, LogSpan span);

/// An entry of a kind, by its number.
struct NumberedThing {
    std::int64_t entry;
    LoggedThing what;
};

/// What the table of that kind (an index of `LoggedThing`) holds of the entries in the span, by their numbers; all but
/// what stands in `log_entry`. Nothing for kinds without a table.
std::vector<NumberedThing> read_things(StoreConnection& connection, std::size_t kind, LogSpan span);
bool has_log_table(std::size_t kind);

/// Writes an entry's rows, and gives its number. Inside a change only.
std::int64_t write_log_entry(StoreConnection& connection, const LogEntry& entry);

/// The entry takes another name wherever the log and what was learnt speak of it. Inside a change only.
void rename_logged(StoreConnection& connection, EntryKind kind, const std::string& old, const std::string& name);
/// In the log alone; and in what was learnt alone, where that speaks of the old name.
void rename_in_log(StoreConnection& connection, EntryKind kind, const std::string& old, const std::string& name);
void follow_in_learnt(StoreConnection& connection, EntryKind kind, const std::string& old, const std::string& name);

}  // namespace baitwright
