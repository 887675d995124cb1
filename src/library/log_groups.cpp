#include "library/log_groups.h"

#include <map>

#include "quantities/fault.h"

namespace baitwright {

LoggedGroup enter(LogBook log, const GroupToEnter& group) {
    LoggedGroup entered{group.front(), {}};
    entered.entry.id = log.add(entered.entry);
    for (std::size_t i = 1; i < group.size(); ++i) {
        LogEntry entry = group[i];
        entry.session = entered.entry.id;
        entry.id = log.add(entry);
        entered.belonging.push_back(std::move(entry));
    }
    return entered;
}

std::vector<LoggedGroup> grouped(const std::vector<LogEntry>& entries) {
    std::vector<LoggedGroup> groups;
    std::map<std::int64_t, std::size_t> places;
    for (const LogEntry& entry : entries)
        if (is_session(entry) || entry.session == 0) {
            if (is_session(entry)) places[entry.id] = groups.size();
            groups.push_back({entry, {}});
        }
    for (const LogEntry& entry : entries) {
        if (is_session(entry) || entry.session == 0) continue;
        const auto place = places.find(entry.session);
        if (place == places.end())
            groups.push_back({entry, {}});
        else
            groups[place->second].belonging.push_back(entry);
    }
    return groups;
}

LogEntry entry_numbered(const LogBook& log, std::int64_t id) {
    if (auto entry = log.find(id)) return *std::move(entry);
    throw NotFound("unknown-entry", "the log has no number " + std::to_string(id),
                   "see them with: baitwright log list");
}

LoggedGroup group_of(const LogBook& log, const LogEntry& entry) {
    const std::int64_t session = is_session(entry) ? entry.id : entry.session;
    LoggedGroup group{session == 0 || session == entry.id ? entry : entry_numbered(log, session), {}};
    if (session == 0) return group;
    for (LogEntry& standing : group.entry.undone_by == 0 ? log.entries() : log.all_entries())
        if (standing.session == session && !std::holds_alternative<LogUndone>(standing.what))
            group.belonging.push_back(std::move(standing));
    return group;
}

}  // namespace baitwright
