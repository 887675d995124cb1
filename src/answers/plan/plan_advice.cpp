#include "answers/plan/plan_advice.h"

#include <algorithm>

#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double cold_celsius = 8, warm_celsius = 18, hot_celsius = 25;

Temperature degrees(double celsius) {
    return Temperature::from_celsius(celsius);
}

bool feeds_at_start(const SessionPlan& plan) {
    return std::any_of(plan.put_ins.begin(), plan.put_ins.end(),
                       [](const PlannedFeed& put_in) { return put_in.at < 1.0 * minute; });
}

void advise_on_warmth(double celsius, std::vector<PlanAdvice>& advice) {
    if (celsius < cold_celsius)
        advice.push_back(
            {"Feed a third to a half of this.",
             {"below {} fish eat little, and what lies uneaten is found before the hook", {degrees(cold_celsius)}}});
    if (celsius > warm_celsius)
        advice.push_back(
            {"Have up to half as much again ready.", {"above {} fish eat more and faster", {degrees(warm_celsius)}}});
    if (celsius > hot_celsius)
        advice.push_back({"Keep wet bait in the shade, covered, and bin what smells sour.",
                          {"above {} damp mix and live feed spoil within hours", {degrees(hot_celsius)}}});
}

}  // namespace

std::vector<PlanAdvice> plan_advice(const Strategy& strategy, const SessionPlan& plan) {
    std::vector<PlanAdvice> advice;
    if (strategy.water.temperature) advise_on_warmth(strategy.water.temperature->in_celsius(), advice);
    if (strategy.water.clarity == "clear")
        advice.push_back({"Make the mix dark; over a pale bed match the bed.",
                          "in clear water fish are seen above feed that stands out from the bed, and they know it"});
    if (feeds_at_start(plan))
        advice.push_back({"Start a stride past the edge of the feed, and work back as bites slow.",
                          "the first fish come from the edge, and those on the feed are not scared off"});
    return advice;
}

}  // namespace baitwright
