#include "answers/paid/brought_for_advice.h"

#include <algorithm>
#include <cmath>

#include "answers/paid/paid_sessions.h"
#include "answers/paid/what_paid.h"

namespace baitwright {

namespace {

/// The days that are like this one, the nearest likeness first; the last is any day.
struct LikeDays {
    PaidBy by;
    std::string group, where;
};

std::vector<LikeDays> like_days(const Circumstances& now) {
    std::vector<LikeDays> days;
    if (!now.clarity.empty()) days.push_back({PaidBy::clarity, now.clarity, "in " + now.clarity + " water"});
    if (now.temperature) {
        PaidSession at;
        at.session.water = now.temperature;
        const std::string band = group_of(at, PaidBy::temperature);
        days.push_back({PaidBy::temperature, band, "in water " + band});
    }
    if (!now.season.empty()) days.push_back({PaidBy::season, now.season, "in " + now.season});
    days.push_back({PaidBy::all, "", ""});
    return days;
}

std::string fish_in_log(const std::vector<LogEntry>& log, const Circumstances& now) {
    for (const std::string& fish : now.fish)
        if (has_catch_of(log, fish)) return fish;
    return {};
}

/// How many times as much as the others, by the sessions of each.
Ratio times_of_others(const PaidGroup& group, const PaidStrategy& strategy) {
    double log_sum = 0, sessions = 0;
    for (const PaidStrategy& other : group.strategies) {
        if (&other == &strategy) continue;
        log_sum += other.sessions * std::log(other.kilos_an_hour.middle);
        sessions += other.sessions;
    }
    return strategy.kilos_an_hour.middle / std::exp(log_sum / sessions);
}

std::vector<BroughtBefore> brought_in(const PaidGroup& group, const std::string& where) {
    std::vector<BroughtBefore> brought;
    if (!group.verdict) return brought;
    for (const PaidStrategy& strategy : group.strategies) {
        if (strategy.sessions < fewest_sessions) continue;
        const bool is_better = strategy.name == group.verdict->better;
        const bool sure = group.verdict->is_sure && (is_better || group.strategies.size() == 2);
        brought.push_back({strategy.name, times_of_others(group, strategy), strategy.sessions, sure, where});
    }
    return brought;
}

}  // namespace

std::vector<BroughtBefore> brought_for_advice(const std::vector<LogEntry>& log, const Circumstances& now) {
    if (log.empty()) return {};
    PaidRequest request;
    request.log = log;
    request.fish = fish_in_log(log, now);
    for (const LikeDays& days : like_days(now)) {
        request.by = days.by;
        const PaidAnswer answer = what_paid(request);
        for (const PaidGroup& group : answer.groups)
            if (group.of == days.group)
                if (std::vector<BroughtBefore> brought = brought_in(group, days.where); !brought.empty())
                    return brought;
    }
    return {};
}

}  // namespace baitwright
