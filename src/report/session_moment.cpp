#include "report/session_moment.h"

#include <cmath>

#include "quantities/clock.h"
#include "quantities/units.h"

namespace baitwright {

std::string session_moment(const SessionPlan& plan, Time at) {
    const double minutes = std::round(at.in(minute));
    if (plan.start) return clock_text(*plan.start + minutes);
    if (minutes == 0) return "the start";
    return minutes < 0 ? hours_and_minutes(Time{} - at) + " before" : hours_and_minutes(at);
}

std::string moment_before(const SessionPlan& plan, Time at) {
    if (!plan.start) return hours_and_minutes(Time{} - at);
    const double minutes = std::round(at.in(minute));
    const double of_day = *plan.start + minutes;
    return clock_text(of_day) + (of_day >= 0 ? "" : of_day >= -24 * 60 ? " the day before" : " two days before");
}

std::string work_text(const SessionPlan& plan) {
    return hours_and_minutes(plan.hands_on);
}

}  // namespace baitwright
