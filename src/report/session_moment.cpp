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
    return clock_text(*plan.start + minutes) + (*plan.start + minutes < 0 ? " the day before" : "");
}

}  // namespace baitwright
