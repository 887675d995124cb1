#include "library/log_notes.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "files/notes_text.h"
#include "library/as_told.h"
#include "library/change_library.h"
#include "library/log_cost.h"
#include "library/stock_come_home.h"
#include "quantities/in_quotes.h"

namespace baitwright {

namespace {

/// Takes groups into the log one by one, inside one change.
class TakingIn {
public:
    TakingIn(LogBook log, LogAnswer& answer) : log_(log), answer_(answer) {}

    void take(const GroupToEnter& group) {
        if (!is_session(group.front())) return take_alone(group.front());
        const auto& session = std::get<LoggedSession>(group.front().what);
        if (const auto known = log_.session_from(session, group.front().on)) {
            const LoggedGroup& there = sessions().at(*known);
            answer_.known.push_back({there.entry, as_told(there) != as_told(group)});
            return;
        }
        enter_noted(group);
        if (sessions_) (*sessions_)[answer_.entered.back().entry.id] = answer_.entered.back();
    }

private:
    void enter_noted(const GroupToEnter& group) {
        const LoggedGroup& entered = answer_.entered.emplace_back(enter(log_, group));
        std::vector<std::int64_t> belonging;
        for (const LogEntry& entry : entered.belonging) belonging.push_back(entry.id);
        log_.mark_from_notes(entered.entry.id, belonging);
    }

    /// All sessions of the log, read when the first is known.
    std::map<std::int64_t, LoggedGroup>& sessions() {
        if (!sessions_) {
            sessions_.emplace();
            for (LoggedGroup& group : grouped(log_.entries())) (*sessions_)[group.entry.id] = std::move(group);
        }
        return *sessions_;
    }

    /// Two alike of one day may well be: as many as the notes hold beyond those that the log has are new.
    void take_alone(const LogEntry& entry) {
        if (!alone_) {
            alone_.emplace();
            for (const LogEntry& there : log_.entries())
                if (there.session == 0 && !is_session(there)) alone_->insert(as_told(there));
        }
        const auto there = alone_->find(as_told(entry));
        if (there == alone_->end()) {
            enter_noted({entry});
            return;
        }
        alone_->erase(there);
        ++answer_.known_alone;
    }

    LogBook log_;
    LogAnswer& answer_;
    std::optional<std::map<std::int64_t, LoggedGroup>> sessions_;
    std::optional<std::multiset<std::string>> alone_;
};

/// Many sessions of one strategy cost the same.
class ReckonedCosts {
public:
    ReckonedCosts(const Shelf& shelf, CostRequest money) : shelf_(shelf), money_(std::move(money)) {}
    std::optional<Money> of(const LoggedSession& session) {
        const auto key = std::tuple(session.strategy, session.length.si(), session.anglers);
        const auto known = costs_.find(key);
        if (known != costs_.end()) return known->second;
        return costs_[key] = reckoned_cost(shelf_, session, money_);
    }

private:
    const Shelf& shelf_;
    CostRequest money_;
    std::map<std::tuple<std::string, double, int>, std::optional<Money>> costs_;
};

/// How the sessions can be taken out of the shed, where they are few: who takes a whole log in asks for another thing.
std::vector<SessionToBook> all_to_book(Store& store, const std::vector<LoggedGroup>& entered) {
    constexpr std::size_t most_offered = 3;
    std::vector<SessionToBook> offered;
    if (entered.size() > most_offered) return offered;
    for (const LoggedGroup& group : entered)
        if (const auto* session = std::get_if<LoggedSession>(&group.entry.what))
            if (auto book = to_book(store, *session, group.entry.on)) offered.push_back(*std::move(book));
    return offered;
}

GroupToEnter completed(const NotedGroup& group, LogNames& names) {
    GroupToEnter entries = group.entries;
    for (LogEntry& entry : entries) names.complete(entry);
    return entries;
}

bool has_moisture(const LoggedMix& mix) {
    return std::any_of(mix.parts.begin(), mix.parts.end(),
                       [](const WeighedPart& part) { return part.moisture.has_value(); });
}

/// What is the same as before keeps what was worked out of it then.
void keep_unchanged(GroupToEnter& group, const LoggedGroup& before) {
    std::vector<LogEntry> old = before.belonging;
    old.push_back(before.entry);
    for (LogEntry& entry : group) {
        auto* mix = std::get_if<LoggedMix>(&entry.what);
        if (!mix) continue;
        const auto same = std::find_if(old.begin(), old.end(), [&](const LogEntry& there) {
            return there.what.index() == entry.what.index() && as_told(there) == as_told(entry);
        });
        if (same == old.end()) continue;
        const auto& known = std::get<LoggedMix>(same->what);
        if (mix->parts.empty()) {
            mix->parts = known.parts;
            mix->wetting = known.wetting;
        }
        old.erase(same);
    }
}

std::vector<GroupToEnter> completed_groups(const Notes& notes, LogNames& names, const Shelf& shelf,
                                           const CostRequest& money) {
    ReckonedCosts costs(shelf, money);
    std::vector<GroupToEnter> groups;
    for (const NotedGroup& group : notes.groups) {
        groups.push_back(completed(group, names));
        if (auto* session = std::get_if<LoggedSession>(&groups.back().front().what); session && !session->cost)
            session->cost = costs.of(*session);
    }
    return groups;
}

std::vector<MixFromNotes> made_known(const std::vector<EntryChange>& changes) {
    std::vector<MixFromNotes> mixes;
    mixes.reserve(changes.size());
    for (const EntryChange& change : changes)
        mixes.push_back({change.name, change.kind == EntryChange::Kind::unchanged  ? MixFromNotes::Became::known
                                      : change.kind == EntryChange::Kind::replaced ? MixFromNotes::Became::replaced
                                                                                   : MixFromNotes::Became::added});
    return mixes;
}

}  // namespace

std::string notes_to_edit(const Shelf& shelf, const LoggedGroup& group) {
    const std::vector<Feel> feels = shelf.feels();
    std::vector<LogEntry> entries{group.entry};
    entries.insert(entries.end(), group.belonging.begin(), group.belonging.end());
    for (LogEntry& entry : entries) {
        auto* mix = std::get_if<LoggedMix>(&entry.what);
        if (!mix) continue;
        LoggedMix by_library;
        by_library.feel = mix->feel;
        if (!mix->feel.empty()) read_feel(by_library, feels);
        if (by_library.wetness == mix->wetness) mix->wetness.reset();
        mix->within = 0.0;
        if (has_moisture(*mix)) continue;
        mix->wetting = Mass{};
        mix->parts.clear();
    }
    return notes_text(entries);
}

LogAnswer take_notes(Store& store, const LibraryPlace& place, const Notes& notes, const CostRequest& money,
                     Date today) {
    if (!notes.faults.empty()) throw InputError(notes.faults);
    check_file(notes.made, notes.text, store);
    LogAnswer answer;
    store.change([&] {
        // The mixes first: what was weighed of them is told by what they are made of.
        answer.mixes = made_known(put_checked(store, notes.made, today));
        LogNames names(store, place, UnknownName::kept);
        const std::vector<GroupToEnter> groups = completed_groups(notes, names, store, money);
        answer.warnings = names.warnings();
        TakingIn taking(store.log(), answer);
        for (const GroupToEnter& group : groups) taking.take(group);
        take_stock_home(store, notes, answer);
    });
    if (notes.stock.empty()) answer.to_book = all_to_book(store, answer.entered);  // else they say what was taken out
    return answer;
}

LogAnswer replace_by_notes(Store& store, const LibraryPlace& place, std::int64_t id, const Notes& notes, Date today) {
    if (!notes.faults.empty()) throw InputError(notes.faults);
    if (notes.groups.size() != 1)
        throw InputError(fault_of_file("several-entries", "the notes hold more than the one entry that was edited",
                                       "keep one session, or one entry; others go in with: baitwright log add --from",
                                       notes.name));
    LogNames names(store, place, UnknownName::kept);
    NotedGroup noted = notes.groups.front();
    keep_unchanged(noted.entries, group_of(store.log(), entry_numbered(store.log(), id)));
    const GroupToEnter group = completed(noted, names);
    LogAnswer answer;
    answer.warnings = names.warnings();
    store.change([&] {
        answer.undone = store.log().undo(id, today);
        answer.entered.push_back(enter(store.log(), group));
    });
    return answer;
}

}  // namespace baitwright
