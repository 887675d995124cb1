#include "answers/paid/paid_sessions.h"

#include <algorithm>
#include <map>
#include <set>

#include "answers/strategy/advise_points.h"
#include "bait/advice_rule.h"
#include "bait/strategy.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

struct TakenSession {
    PaidSession told;
    bool unweighed = false;
};

std::string sessions_text(int count) {
    return std::to_string(count) + (count == 1 ? " session" : " sessions");
}

/// Each strategy as it was last written.
std::vector<std::string> strategies_of(const std::vector<LogEntry>& log) {
    std::map<std::string, std::string> names;
    for (const LogEntry& entry : log)
        if (const auto* session = std::get_if<LoggedSession>(&entry.what); session && !session->strategy.empty())
            names[folded_name(session->strategy)] = session->strategy;
    std::vector<std::string> all;
    all.reserve(names.size());
    for (const auto& [folded, name] : names) all.push_back(name);
    return all;
}

std::set<std::string> wanted_strategies(const PaidRequest& request) {
    const std::vector<std::string> known = strategies_of(request.log);
    std::set<std::string> wanted;
    if (known.empty()) return wanted;
    for (const std::string& said : request.strategies) {
        const SaidName found = said_name(said, known);
        if (!found.name)
            throw NotFound(fault_of_name(
                said, known,
                Fault{"unknown-strategy", "the log has no session of " + in_quotes(said), "it has " + listed(known)}));
        wanted.insert(folded_name(*found.name));
    }
    return wanted;
}

bool is_wanted_fish(const LoggedCatch& caught, const std::string& wanted) {
    return wanted.empty() || is_same_fish(folded_name(caught.fish), wanted);
}

void refuse_unknown_fish(const PaidRequest& request, const std::string& wanted) {
    std::set<std::string> known;
    for (const LogEntry& entry : request.log)
        if (const auto* caught = std::get_if<LoggedCatch>(&entry.what); caught && !caught->fish.empty())
            known.insert(folded_name(caught->fish));
    if (known.empty()) return;
    const std::vector<std::string> names(known.begin(), known.end());
    const std::string near = did_you_mean(wanted, names);
    throw UsageError("unknown-fish", "--fish: the log has no catch of " + in_quotes(request.fish),
                     near.empty() ? "it has " + listed(names) : near);
}

void add_catch(TakenSession& to, const LoggedCatch& caught) {
    if (!caught.mass && caught.count > 0) to.unweighed = true;
    to.told.caught += caught.mass.value_or(Mass{});
    to.told.fish += caught.count;
}

/// The sessions by the number of their entry, in the order of the log, with their catches.
std::vector<TakenSession> taken_sessions(const PaidRequest& request, const std::set<std::string>& wanted) {
    const std::string fish = folded_name(request.fish);
    std::vector<TakenSession> sessions;
    std::map<std::int64_t, std::size_t> places;
    for (const LogEntry& entry : request.log) {
        const auto* session = std::get_if<LoggedSession>(&entry.what);
        if (!session || (request.since && entry.on < *request.since)) continue;
        if (!wanted.empty() && wanted.count(folded_name(session->strategy)) == 0) continue;
        places[entry.id] = sessions.size();
        sessions.push_back({{entry.on, *session}});
    }
    for (const LogEntry& entry : request.log) {
        const auto* caught = std::get_if<LoggedCatch>(&entry.what);
        const auto place = places.find(entry.session);
        if (caught && place != places.end() && is_wanted_fish(*caught, fish))
            add_catch(sessions[place->second], *caught);
    }
    return sessions;
}

}  // namespace

bool has_catch_of(const std::vector<LogEntry>& log, const std::string& fish) {
    return std::any_of(log.begin(), log.end(), [&](const LogEntry& entry) {
        const auto* caught = std::get_if<LoggedCatch>(&entry.what);
        return caught && is_wanted_fish(*caught, folded_name(fish));
    });
}

PaidSessions paid_sessions(const PaidRequest& request) {
    PaidSessions found;
    if (!request.fish.empty() && !has_catch_of(request.log, request.fish))
        refuse_unknown_fish(request, folded_name(request.fish));
    int unnamed = 0, untimed = 0, unweighed = 0;
    for (TakenSession& session : taken_sessions(request, wanted_strategies(request))) {
        const LoggedSession& told = session.told.session;
        if (told.strategy.empty())
            ++unnamed;
        else if (!(told.length > Time{}) || told.anglers < 1)
            ++untimed;
        else if (session.unweighed)
            ++unweighed;
        else
            found.usable.push_back(std::move(session.told));
    }
    const auto warn = [&](int count, const char* code, const char* why) {
        if (count > 0) found.warnings.push_back({code, sessions_text(count) + " left out: " + why});
    };
    warn(unweighed, "not-weighed", "fish were counted but not weighed");
    warn(untimed, "no-length", "not said how long it was fished");
    warn(unnamed, "no-strategy", "not said how it was fed");
    return found;
}

std::vector<std::string> known_groups(PaidBy by) {
    if (by == PaidBy::season) return {season_names.begin(), season_names.end()};
    if (by == PaidBy::clarity) return {clarity_names.begin(), clarity_names.end()};
    if (by == PaidBy::temperature) return {"below 8 degC", "8 to 12 degC", "12 to 18 degC", "18 degC and above"};
    return {};
}

std::string group_of(const PaidSession& session, PaidBy by) {
    const std::vector<std::string> known = known_groups(by);
    if (by == PaidBy::clarity) return session.session.clarity;
    if (by == PaidBy::venue) return session.session.venue;
    if (by == PaidBy::season) {
        const auto number = static_cast<unsigned>(std::chrono::year_month_day(session.on).month());
        return known[number < 3 || number == 12 ? 3 : (number - 3) / 3];
    }
    if (by == PaidBy::temperature && session.session.water) {
        const double celsius = session.session.water->in_celsius();
        return known[celsius < 8 ? 0 : celsius < 12 ? 1 : celsius < 18 ? 2 : 3];
    }
    return {};
}

}  // namespace baitwright
