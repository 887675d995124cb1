#pragma once

#include <optional>
#include <vector>

#include "answers/money/cost_request.h"
#include "answers/pellets/soak_request.h"
#include "answers/plan/hot_day_request.h"
#include "answers/plan/kit.h"
#include "bait/venue.h"
#include "quantities/temperature.h"

namespace baitwright {

/// A question to `plan_session`.
struct PlanRequest {
    CostRequest cost;          ///< with the length, the people, the sessions and what is left out
    std::optional<int> start;  ///< minutes since midnight
    std::optional<Time>
        work_from;                 ///< so long before the start the work can begin, and nothing is done before; above 0
    bool work_from_clock = false;  ///< it was said as a time of the day: a later start leaves more of it
    int hands = 1;                 ///< pairs of hands that do the work, 1 to 10
    Time travel;  ///< the way to the water, after which nothing but bringing to hand is left; up to 24 h
    std::optional<Temperature>
        water;                 ///< that soaks and wets; as the strategy's where not given, 15 degC where it has none
    PumpSetup pump;            ///< for expanders
    std::vector<KitItem> kit;  ///< empty: not known
    std::optional<Venue> venue;
    std::optional<AirSetting> air;  ///< asked for: what dries the tubs; what it does not say is the strategy's
    std::optional<Area> tub;        ///< the open face of one, where it is known
};

}  // namespace baitwright
