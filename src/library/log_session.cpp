#include "library/log_session.h"

#include <algorithm>
#include <chrono>

#include "answers/strategy/unroll_strategy.h"
#include "bait/kitchen_rounding.h"
#include "bait/log_limits.h"
#include "library/log_cost.h"
#include "library/log_groups.h"
#include "library/log_names.h"
#include "quantities/clock.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

LogEntry new_entry(Date on, LoggedThing what) {
    LogEntry entry;
    entry.on = on;
    entry.what = std::move(what);
    return entry;
}

/// The mix among those of the session that was meant; `flag` told something of it.
std::vector<std::size_t> mixes_meant(const std::vector<LoggedMix>& mixes, const std::string& word, const char* flag) {
    std::vector<std::string> names;
    for (const LoggedMix& mix : mixes)
        if (std::find(names.begin(), names.end(), mix.of) == names.end()) names.push_back(mix.of);
    const auto name = said_name(word, names).name;
    if (!name)
        throw UsageError("not-fed", std::string(flag) + ": this session has no mix called " + in_quotes(word),
                         names.empty() ? "it feeds no mix that is wetted" : "it has " + listed(names));
    std::vector<std::size_t> meant;
    for (std::size_t i = 0; i < mixes.size(); ++i)
        if (mixes[i].of == *name) meant.push_back(i);
    return meant;
}

/// A mix that goes in at the same feel in several ways is made once.
void join_same(std::vector<LoggedMix>& mixes) {
    std::vector<LoggedMix> joined;
    for (LoggedMix& mix : mixes) {
        const auto same = std::find_if(joined.begin(), joined.end(), [&](const LoggedMix& other) {
            return other.of == mix.of && other.feel == mix.feel;
        });
        if (same == joined.end())
            joined.push_back(std::move(mix));
        else
            *same->dry += *mix.dry;
    }
    mixes = std::move(joined);
}

void tell_water(std::vector<LoggedMix>& mixes, const PlannedSession& planned) {
    for (const auto& [word, water] : planned.water) {
        const std::vector<std::size_t> meant = mixes_meant(mixes, word, "--water");
        if (meant.size() > 1)
            throw UsageError("several-feels",
                             "--water: " + in_quotes(mixes[meant.front()].of) + " is fed at " +
                                 std::to_string(meant.size()) + " feels in this session",
                             "log each by itself, as in: baitwright log mix \"" + mixes[meant.front()].of +
                                 "\" --dry 1kg --water 700ml --feel firm");
        LoggedMix& mix = mixes[meant.front()];
        mix.water = water;
        for (const Fault& fault : log_faults(mix))
            throw UsageError(fault.code, "--water: " + fault.message, fault.hint);
    }
}

/// What was fed damp, as planned and as told; with what is in it.
std::vector<LoggedMix> planned_mixes(const UnrolledStrategy& unrolled, const PlannedSession& planned, LogNames& names) {
    std::vector<LoggedMix> mixes;
    for (const FeedNeed& need : unrolled.feeds) {
        if (need.fed.feel.empty()) continue;
        LoggedMix mix;
        mix.of = need.name;
        mix.feel = need.fed.feel;
        mix.dry = need.dry;
        mixes.push_back(std::move(mix));
    }
    for (const auto& [word, feel] : planned.feels)
        for (const std::size_t i : mixes_meant(mixes, word, "--feel")) mixes[i].feel = names.feel_called(feel);
    join_same(mixes);
    for (LoggedMix& mix : mixes) mix.dry = kitchen_mass(*mix.dry);  // as the plan has it weighed
    tell_water(mixes, planned);
    for (LoggedMix& mix : mixes) {
        read_feel(mix, names.feels());
        const auto fed = std::find_if(unrolled.feeds.begin(), unrolled.feeds.end(), [&](const FeedNeed& need) {
            return need.name == mix.of && !need.fed.feel.empty();
        });
        weigh_parts(mix, fed->fed.mix);
    }
    return mixes;
}

[[noreturn]] void refuse_known(const LoggedSession& session, std::int64_t id, Date on) {
    const std::string number = std::to_string(id);
    throw Error(FaultClass::answer_is_no,
                Fault{"already-logged",
                      "a session of " + in_quotes(session.strategy) + " on " + date_text(on) +
                          " is in the log already, as number " + number,
                      "add a catch to it with: baitwright log catch; take it back with: baitwright log undo " + number +
                          "; for a second one of that day say its --start"});
}

/// Sessions of that day; of that strategy, where one is named.
std::vector<LogEntry> sessions_on(const LogBook& log, Date on, const std::string& strategy) {
    std::vector<LogEntry> sessions;
    for (LogEntry& entry : log.entries()) {
        const auto* session = std::get_if<LoggedSession>(&entry.what);
        if (session && entry.on == on && (strategy.empty() || session->strategy == strategy))
            sessions.push_back(std::move(entry));
    }
    return sessions;
}

void refuse_several(const std::vector<LogEntry>& sessions, Date on) {
    if (sessions.size() < 2) return;
    std::vector<std::string> names;
    names.reserve(sessions.size());
    for (const LogEntry& entry : sessions) names.push_back(in_quotes(subject_of(entry.what)));
    throw UsageError(
        "several-sessions",
        "the log has " + std::to_string(sessions.size()) + " sessions on " + date_text(on) + ": " + listed(names),
        "say which with --strategy; or add the catch to it with: baitwright log edit " +
            std::to_string(sessions.front().id));
}

/// How long it was, and what it cost where that was not told.
void fill_session(const Shelf& shelf, LoggedSession& session, const CostRequest& money) {
    if (!(session.length > Time{})) session.length = shelf.strategy(session.strategy).length;
    if (!session.cost) session.cost = reckoned_cost(shelf, session, money);
}

/// What a session takes is reckoned for a day of it at the most.
bool is_longer_than_planned(const LoggedSession& session) {
    return session.length > 24.0 * hour;
}

void refuse_longer_than_planned(const LoggedSession& session) {
    if (is_longer_than_planned(session))
        throw UsageError("out-of-range", "--hours: what goes in is reckoned for 24 h at the most",
                         "log the session with: baitwright log blank \"" + session.strategy +
                             "\" --hours 30h; its mixes with: baitwright log mix");
}

/// Sessions of the day before that ran on past midnight, by which a catch of the small hours is theirs.
std::string session_of_night_before(const LogBook& log, Date on) {
    const Date before = on - std::chrono::days{1};
    for (const LogEntry& entry : sessions_on(log, before, "")) {
        const auto& session = std::get<LoggedSession>(entry.what);
        if (!session.start.empty() && parse_clock(session.start) * minute + session.length > 24.0 * hour)
            return "; " + in_quotes(session.strategy) + " of " + date_text(before) +
                   " ran on past midnight: what was caught in it is of that day, --on " + date_text(before);
    }
    return {};
}

}  // namespace

LogAnswer log_planned(Store& store, const LibraryPlace& place, const PlannedSession& planned, Date on,
                      const CostRequest& money) {
    LogNames names(store, place, UnknownName::refused);
    LogEntry entry = new_entry(on, planned.session);
    names.complete(entry);
    auto& session = std::get<LoggedSession>(entry.what);
    const Strategy strategy = store.strategy(session.strategy);
    const bool enters_mixes = planned.mixes == PlannedSession::Mixes::entered;
    if (enters_mixes) refuse_longer_than_planned(session);
    std::vector<LoggedMix> mixes;
    if (!is_longer_than_planned(session)) {
        const UnrolledStrategy unrolled = unroll_strategy(store, strategy, asked_of(session));
        if (enters_mixes) mixes = planned_mixes(unrolled, planned, names);
    }
    fill_session(store, session, money);
    GroupToEnter group{entry};
    for (LoggedMix& mix : mixes) group.push_back(new_entry(on, std::move(mix)));
    for (const LoggedCatch& caught : planned.caught) group.push_back(new_entry(on, caught));
    LogAnswer answer;
    store.change([&] {
        LogBook log = store.log();
        if (const auto known = log.session_from(session, on)) refuse_known(session, *known, on);
        answer.entered.push_back(enter(log, group));
    });
    if (const auto book = to_book(store, session, on)) answer.to_book.push_back(*book);
    return answer;
}

LogAnswer log_catch(Store& store, const LibraryPlace& place, const CatchToLog& caught, Date on,
                    const CostRequest& money) {
    LogNames names(store, place, UnknownName::refused);
    LogEntry made = new_entry(on, caught.session);
    names.complete(made);
    auto& session = std::get<LoggedSession>(made.what);
    LogAnswer answer;
    store.change([&] {
        LogBook log = store.log();
        LogEntry entry = new_entry(on, caught.caught);
        const std::vector<LogEntry> there = sessions_on(log, on, session.strategy);
        refuse_several(there, on);
        if (there.empty() && !session.strategy.empty()) {
            fill_session(store, session, money);
            answer.entered.push_back(enter(log, {made, entry}));
            return;
        }
        if (!there.empty()) {
            const auto& known = std::get<LoggedSession>(there.front().what);
            if (session.length > Time{} && session.length != known.length)
                throw UsageError("unfit-flag", "--hours: the session of that day lasted otherwise in the log",
                                 "leave it out, or change the session with: baitwright log edit " +
                                     std::to_string(there.front().id));
            entry.session = there.front().id;
        } else {
            answer.warnings.push_back(
                {"no-session",
                 "the log has no session of that day, so this catch stands alone and says nothing "
                 "of what paid" +
                     session_of_night_before(log, on)});
        }
        entry.id = log.add(entry);
        answer.entered.push_back({entry, {}});
    });
    if (const auto& first = answer.entered.front(); !first.belonging.empty())
        if (const auto book = to_book(store, session, on)) answer.to_book.push_back(*book);
    return answer;
}

}  // namespace baitwright
