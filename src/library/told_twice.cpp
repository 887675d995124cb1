#include "library/told_twice.h"

#include <set>
#include <utility>
#include <vector>

#include "library/as_told.h"
#include "library/log_groups.h"

namespace baitwright {

namespace {

/// One store's log by what was told: of a session its own words, of an entry alone likewise.
class ToldLog {
public:
    ToldLog(const Store& store, const std::set<std::string>& marks_of_other) : log_(store.log()), marks_(log_.marks()) {
        std::vector<LogEntry> told = log_.all_entries();
        std::erase_if(told, [](const LogEntry& entry) { return std::holds_alternative<LogUndone>(entry.what); });
        for (LoggedGroup& group : grouped(told))
            if (!marks_of_other.contains(mark(group.entry))) by_words_.emplace(as_told(group.entry), std::move(group));
    }

    [[nodiscard]] const std::string& mark(const LogEntry& entry) const { return marks_.at(entry.id); }
    [[nodiscard]] bool is_from_notes(const LoggedGroup& group) const { return log_.is_from_notes(group.entry.id); }

    /// Each group that the other store does not know by its mark, with the words of its first entry.
    using Groups = std::multimap<std::string, LoggedGroup>;
    [[nodiscard]] const Groups& groups() const { return by_words_; }

private:
    LogBook log_;
    std::map<std::int64_t, std::string> marks_;
    Groups by_words_;
};

/// How much of the one is told in the other.
std::size_t told_in_both(const LoggedGroup& one, const LoggedGroup& other) {
    std::multiset<std::string> rest = as_told(other);
    std::size_t both = 0;
    for (const std::string& told : as_told(one))
        if (const auto found = rest.find(told); found != rest.end()) {
            rest.erase(found);
            ++both;
        }
    return both;
}

/// The mark of each entry of `from`, for the entry of `to` that tells the same.
void give_marks(const ToldLog& marked, const LoggedGroup& from, const LoggedGroup& to,
                std::map<std::int64_t, std::string>& marks) {
    marks[to.entry.id] = marked.mark(from.entry);
    std::multimap<std::string, std::int64_t> rest;
    for (const LogEntry& entry : to.belonging) rest.emplace(as_told(entry), entry.id);
    for (const LogEntry& entry : from.belonging)
        if (const auto same = rest.find(as_told(entry)); same != rest.end()) {
            marks[same->second] = marked.mark(entry);
            rest.erase(same);
        }
}

std::set<std::string> all_marks(const Store& store) {
    std::set<std::string> all;
    for (auto& [id, mark] : store.log().marks()) all.insert(std::move(mark));
    return all;
}

}  // namespace

MarksToGive marks_of_told_twice(const Store& ours, const Store& theirs) {
    MarksToGive give;
    const ToldLog our_log(ours, all_marks(theirs)), their_log(theirs, all_marks(ours));
    std::set<std::int64_t> paired;
    for (const auto& [words, group] : our_log.groups()) {
        const auto [first, last] = their_log.groups().equal_range(words);
        const LoggedGroup* best = nullptr;
        std::size_t most = 0;
        for (auto other = first; other != last; ++other)
            if (const std::size_t both = told_in_both(group, other->second);
                both > most && !paired.contains(other->second.entry.id)) {
                best = &other->second;
                most = both;
            }
        if (!best) continue;
        const bool ours_noted = our_log.is_from_notes(group);
        if (ours_noted == their_log.is_from_notes(*best)) continue;  // two of notes, or two that were typed, are two
        paired.insert(best->entry.id);
        if (ours_noted)
            give_marks(our_log, group, *best, give.theirs);
        else
            give_marks(their_log, *best, group, give.ours);
    }
    return give;
}

}  // namespace baitwright
