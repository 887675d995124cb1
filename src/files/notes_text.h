#pragma once

#include <string>
#include <vector>

#include "bait/log_entry.h"

namespace baitwright {

/// Entries of the log as session notes that `read_notes` reads back to the same: each session where it first stands,
/// with all that belongs to it, kind by kind. Entries that take others back are left out.
/// **Test**: `tests/files/notes_reader_test.cpp`.
std::string notes_text(const std::vector<LogEntry>& entries);

}  // namespace baitwright
