#pragma once

#include <cstdint>
#include <vector>

#include "answers/shared/log_answer.h"
#include "store/log_book.h"

/// Sessions of the log with all that belongs to them.
namespace baitwright {

/// A session and what belongs to it, or one entry alone, that is not entered yet.
using GroupToEnter = std::vector<LogEntry>;

/// Inside `Store::change` only: writes the group down, what belongs to a session under its number.
LoggedGroup enter(LogBook log, const GroupToEnter& group);

/// Each session with what belongs to it, and what belongs to none, in the order of the entries.
std::vector<LoggedGroup> grouped(const std::vector<LogEntry>& entries);

/// The entry of that number. Throws NotFound "unknown-entry".
LogEntry entry_numbered(const LogBook& log, std::int64_t id);
/// The session that it belongs to, or itself, with all that stands of it; of one that was taken back, all that was.
LoggedGroup group_of(const LogBook& log, const LogEntry& entry);

inline bool is_session(const LogEntry& entry) {
    return std::holds_alternative<LoggedSession>(entry.what);
}

}  // namespace baitwright
