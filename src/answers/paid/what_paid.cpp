#include "answers/paid/what_paid.h"

#include <cmath>
#include <map>
#include <set>

#include "answers/paid/paid_sessions.h"
#include "answers/paid/paid_verdict.h"
#include "quantities/listed.h"
#include "quantities/sort_stably.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

using SessionsOfGroup = std::vector<const PaidSession*>;

/// A way of feeding, and what of it the two models need.
struct FedWay {
    PaidStrategy told;
    Takings an_hour, a_pound;
};

/// The currency of the costs; nothing where none is told, or several are.
const Currency* currency_of_costs(const std::vector<PaidSession>& sessions, std::vector<Warning>& warnings) {
    const Currency* found = nullptr;
    for (const PaidSession& session : sessions) {
        if (!session.session.cost) continue;
        const Currency& currency = session.session.cost->currency();
        if (found && !(*found == currency)) {
            warnings.push_back({"mixed-currencies", "costs are in " + std::string(found->code) + " and " +
                                                        std::string(currency.code) + ", so money is left out"});
            return nullptr;
        }
        found = &currency;
    }
    return found;
}

void add_session(FedWay& way, const PaidSession& session, const Currency* currency) {
    PaidStrategy& told = way.told;
    told.name = session.session.strategy;
    ++told.sessions;
    if (!(session.caught > Mass{})) ++told.blanks;
    told.hours += session.session.length;
    told.caught += session.caught;
    told.fish += session.fish;
    way.an_hour.add(session.caught.in(kilogram) / session.session.length.in(hour) / session.session.anglers);
    if (!currency || !session.session.cost || session.session.cost->minor() <= 0) return;
    const Money& cost = *session.session.cost;
    told.cost = told.cost ? *told.cost + cost : cost;
    ++told.priced;
    way.a_pound.add(session.caught.in(kilogram)*std::pow(10.0, currency->minor_digits) /
                    static_cast<double>(cost.minor()));
}

/// In the order of their names.
std::vector<FedWay> ways_of(const SessionsOfGroup& sessions, const Currency* currency) {
    std::map<std::string, FedWay> ways;
    for (const PaidSession* session : sessions)
        add_session(ways[folded_name(session->session.strategy)], *session, currency);
    std::vector<FedWay> all;
    all.reserve(ways.size());
    for (auto& [folded, way] : ways) all.push_back(std::move(way));
    return all;
}

/// The first two by what is to be expected of them.
std::optional<PaidVerdict> verdict_of_best(const DrawnTakings& drawn, const std::vector<Takings>& takings,
                                           const std::vector<const FedWay*>& ways) {
    if (ways.size() < 2 || drawn.worlds == 0) return {};
    const std::vector<std::size_t> order = best_first(drawn, ways.size());
    PaidVerdict verdict = verdict_of(drawn, takings, order[0], order[1]);
    verdict.better = ways[order[0]]->told.name;
    verdict.than = ways[order[1]]->told.name;
    return verdict;
}

std::optional<PaidVerdict> reckon_hours(std::vector<FedWay>& ways, std::uint64_t seed) {
    std::vector<Takings> takings;
    std::vector<const FedWay*> those;
    for (const FedWay& way : ways) {
        takings.push_back(way.an_hour);
        those.push_back(&way);
    }
    const DrawnTakings drawn = draw_takings(takings, seed);
    const std::vector<double> chances = drawn.chances_of_most();
    for (std::size_t way = 0; way < ways.size(); ++way) {
        ways[way].told.best = chances[way];
        if (drawn.worlds > 0) ways[way].told.kilos_an_hour = drawn.expected(way);
    }
    return verdict_of_best(drawn, takings, those);
}

std::optional<PaidVerdict> reckon_money(std::vector<FedWay>& ways, std::uint64_t seed) {
    std::vector<Takings> takings;
    std::vector<FedWay*> priced;
    for (FedWay& way : ways) {
        if (way.told.priced == 0) continue;
        takings.push_back(way.a_pound);
        priced.push_back(&way);
    }
    const DrawnTakings drawn = draw_takings(takings, seed);
    if (drawn.worlds == 0) return {};
    for (std::size_t way = 0; way < priced.size(); ++way) priced[way]->told.kilos_a_pound = drawn.expected(way);
    return verdict_of_best(drawn, takings, {priced.begin(), priced.end()});
}

PaidGroup reckon(const std::string& of, const SessionsOfGroup& sessions, const Currency* currency, std::uint64_t seed) {
    std::vector<FedWay> ways = ways_of(sessions, currency);
    PaidGroup group;
    group.of = of;
    group.verdict = reckon_hours(ways, seed);
    if (currency) group.money = reckon_money(ways, seed);
    sort_stably(ways.begin(), ways.end(), [](const FedWay& a, const FedWay& b) {
        return a.told.kilos_an_hour.middle > b.told.kilos_an_hour.middle;
    });
    for (FedWay& way : ways) group.strategies.push_back(std::move(way.told));
    return group;
}

bool has_enough(const SessionsOfGroup& sessions) {
    std::set<std::string> ways;
    for (const PaidSession* session : sessions) ways.insert(folded_name(session->session.strategy));
    return ways.size() > 1 && sessions.size() >= static_cast<std::size_t>(fewest_sessions);
}

/// The groups by name, and under no name those sessions that do not say.
std::map<std::string, SessionsOfGroup> grouped_sessions(const std::vector<PaidSession>& sessions, PaidBy by) {
    std::map<std::string, SessionsOfGroup> groups;
    for (const PaidSession& session : sessions) groups[group_of(session, by)].push_back(&session);
    return groups;
}

std::string what_is_not_said(PaidBy by) {
    if (by == PaidBy::clarity) return "how clear the water was";
    return by == PaidBy::venue ? "where it was" : "how warm the water was";
}

void reckon_groups(PaidAnswer& answer, const std::vector<PaidSession>& sessions, const PaidRequest& request) {
    std::map<std::string, SessionsOfGroup> groups = grouped_sessions(sessions, request.by);
    if (const auto unsaid = groups.find(""); unsaid != groups.end()) {
        answer.warnings.push_back({"not-said", std::to_string(unsaid->second.size()) + " of " +
                                                   std::to_string(sessions.size()) + " sessions left out: not said " +
                                                   what_is_not_said(request.by)});
        groups.erase(unsaid);
    }
    std::vector<std::string> order = known_groups(request.by), too_few;
    if (order.empty())
        for (const auto& [of, those] : groups) order.push_back(of);
    for (const std::string& of : order) {
        const auto group = groups.find(of);
        if (group == groups.end()) continue;
        if (has_enough(group->second))
            answer.groups.push_back(reckon(of, group->second, answer.currency, request.seed));
        else
            too_few.push_back(of + " (" + std::to_string(group->second.size()) + ")");
    }
    if (!too_few.empty()) answer.warnings.push_back({"too-few", "too few sessions to compare: " + listed(too_few)});
}

}  // namespace

PaidAnswer what_paid(const PaidRequest& request) {
    PaidSessions sessions = paid_sessions(request);
    PaidAnswer answer;
    answer.by = request.by;
    answer.fish = request.fish;
    answer.sessions = static_cast<int>(sessions.usable.size());
    answer.warnings = std::move(sessions.warnings);
    answer.currency = currency_of_costs(sessions.usable, answer.warnings);
    if (sessions.usable.empty()) return answer;
    if (request.by == PaidBy::all) {
        SessionsOfGroup all;
        for (const PaidSession& session : sessions.usable) all.push_back(&session);
        answer.groups.push_back(reckon("", all, answer.currency, request.seed));
    } else {
        reckon_groups(answer, sessions.usable, request);
    }
    return answer;
}

}  // namespace baitwright
