#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "files/notes_reader.h"
#include "files/notes_text.h"
#include "fuzz/check_faults.h"

/// What the reader of session notes promises of any text: it does not throw, gives each fault a place and a hint, and
/// reads as many entries of the same kinds, on the same days, out of what is written of them.
namespace baitwright::fuzz {

inline std::vector<LogEntry> entries_in(const Notes& notes) {
    std::vector<LogEntry> entries;
    for (const NotedGroup& group : notes.groups) {
        const auto first = static_cast<std::int64_t>(entries.size()) + 1;
        const bool is_session = !group.entries.empty() && std::holds_alternative<LoggedSession>(group.entries[0].what);
        for (LogEntry entry : group.entries) {
            entry.id = static_cast<std::int64_t>(entries.size()) + 1;
            if (is_session && entry.id != first) entry.session = first;
            entries.push_back(std::move(entry));
        }
    }
    return entries;
}

inline std::string broken_notes(std::string_view text) {
    return wrong_with([&]() -> std::string {
        const Date latest = parse_date("2026-11-25");
        const Notes notes = read_notes(text, "a.toml", latest);
        if (std::string lack = lacking_in_file(notes.faults); !lack.empty()) return lack;
        const std::vector<LogEntry> entries = entries_in(notes);
        if (!notes.faults.empty() || entries.empty()) return {};
        for (const LogEntry& entry : entries)
            if (entry.on > latest) return "an entry of a day that has not come";
        const Notes again = read_notes(notes_text(entries), "b.toml", latest);
        if (!again.faults.empty()) return "what was written is refused: " + again.faults[0].message;
        const std::vector<LogEntry> back = entries_in(again);
        if (back.size() != entries.size()) return "an entry was lost when written";
        std::vector<int> kinds(std::variant_size_v<LoggedThing>);
        for (const LogEntry& entry : entries) ++kinds[entry.what.index()];
        for (const LogEntry& entry : back) --kinds[entry.what.index()];
        for (const int left : kinds)
            if (left != 0) return "an entry of one kind became one of another when written";
        return {};
    });
}

}  // namespace baitwright::fuzz
