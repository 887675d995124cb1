#include "answers/plan/plan_advice.h"

#include <algorithm>

#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double cold_celsius = 8, warm_celsius = 18, hot_celsius = 25;

bool feeds_at_start(const SessionPlan& plan) {
    return std::any_of(plan.put_ins.begin(), plan.put_ins.end(),
                       [](const PlannedFeed& put_in) { return put_in.at < 1.0 * minute; });
}

void advise_on_warmth(double celsius, std::vector<PlanAdvice>& advice) {
    if (celsius < cold_celsius)
        advice.push_back(
            {"Feed a third to a half of this.", "below 8 degC fish eat little, and feed that lies is feed lost"});
    if (celsius > warm_celsius)
        advice.push_back({"Have up to half as much again ready.", "above 18 degC fish eat more and faster"});
    if (celsius > hot_celsius)
        advice.push_back({"Keep wet bait in the shade, covered, and bin what smells sour.",
                          "above 25 degC damp mix and live feed spoil within hours"});
}

}  // namespace

std::vector<PlanAdvice> plan_advice(const Strategy& strategy, const SessionPlan& plan) {
    std::vector<PlanAdvice> advice;
    if (strategy.water.temperature) advise_on_warmth(strategy.water.temperature->in_celsius(), advice);
    if (strategy.water.clarity == "clear")
        advice.push_back(
            {"Make the mix dark.", "in clear water fish shy away from a pale bed above which they are seen"});
    if (feeds_at_start(plan))
        advice.push_back({"Start about 0.75 m past the edge of the feed, and work back as bites slow.",
                          "the first fish come from the edge, and those on the feed are not scared off"});
    return advice;
}

}  // namespace baitwright
