#include "report/paid_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "quantities/units.h"
#include "report/shown_units.h"
#include "report/significant.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

int sessions_of_both(const PaidGroup& group, const PaidVerdict& verdict) {
    int sessions = 0;
    for (const PaidStrategy& strategy : group.strategies)
        if (strategy.name == verdict.better || strategy.name == verdict.than) sessions += strategy.sessions;
    return sessions;
}

/// Never more than it is: "8 in 10", "97 in 100".
std::string chance_text(const PaidVerdict& verdict) {
    if (verdict.is_sure)
        return fmt::format("{} in 100", std::min(99, static_cast<int>(std::floor(verdict.probability * 100))));
    return fmt::format("{} in 10", std::min(9, static_cast<int>(std::floor(verdict.probability * 10))));
}

std::string what_would_tell(const PaidVerdict& verdict) {
    if (!verdict.more_sessions) return " More than 99 more sessions of each would be needed to tell.";
    return fmt::format(" About {} more session{} of each would tell.", *verdict.more_sessions,
                       *verdict.more_sessions == 1 ? "" : "s");
}

}  // namespace

std::string fish_unit() {
    return units_shown().ounces ? "lb" : "kg";
}

Ratio in_fish_unit(Ratio kilograms) {
    return units_shown().ounces ? (kilograms * kilogram).in(pound) : double(kilograms);
}

Range<double> in_fish_unit(const Range<double>& kilograms) {
    return {in_fish_unit(kilograms.low), in_fish_unit(kilograms.middle), in_fish_unit(kilograms.high)};
}

std::string shown_takings(Ratio takings) {
    const double value = takings;
    if (value >= 9.95) return significant(value, 2);
    return value < 0.095 ? significant(value, 1) : fmt::format("{:.1f}", value);
}

std::string shown_takings(const Range<double>& takings) {
    return shown_takings(takings.low) + " to " + shown_takings(takings.high);
}

std::string verdict_text(const PaidGroup& group, const PaidVerdict& verdict, const std::string& more) {
    if (const int both = sessions_of_both(group, verdict); both < fewest_sessions)
        return fmt::format("Too few to tell: {} sessions.", both);
    if (verdict.probability < worth_speaking)
        return fmt::format("No difference to speak of so far between {} and {}.", verdict.better, verdict.than);
    const std::string found =
        sentence(fmt::format("{} brought {} than {}: about {} times as much ({}).", verdict.better, more, verdict.than,
                             shown_takings(verdict.times.middle), shown_takings(verdict.times)));
    if (verdict.is_sure) return found + " As good as sure: " + chance_text(verdict) + ".";
    return found + " Not sure yet: " + chance_text(verdict) + "." + what_would_tell(verdict);
}

}  // namespace baitwright
