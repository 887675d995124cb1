#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "bait/log_entry.h"
#include "files/library_file.h"
#include "files/noted_stock.h"
#include "files/position.h"
#include "quantities/fault.h"

namespace baitwright {

/// A session and what belongs to it, the session first; or one entry outside any session. None has a number yet.
struct NotedGroup {
    std::vector<LogEntry> entries;
    Position place;  ///< of its heading
};

/// What session notes hold, in the order of their headings' kinds, and everything that is wrong with them.
struct Notes {
    std::string name, text;
    std::vector<NotedGroup> groups;
    std::vector<NotedStock> stock;  ///< in the order of the file
    LibraryFile made;               ///< mixes, in the order of the file; its faults are among those below
    std::vector<Fault> faults;      ///< in the order of the file
};

/// Reads session notes (`docs/files.md`). Days after `latest` are faults. Never throws for what a person wrote.
/// **Test**: `tests/files/notes_reader_test.cpp`.
Notes read_notes(std::string_view text, std::string file_name, Date latest);

}  // namespace baitwright
