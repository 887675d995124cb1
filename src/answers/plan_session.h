#pragma once

#include <optional>
#include <vector>

#include "answers/kit.h"
#include "answers/plan_answer.h"
#include "bait/shelf.h"
#include "bait/venue.h"

namespace baitwright {

/// A question to `plan_session`.
struct PlanRequest {
    CostRequest cost;          ///< with the length, the people, the sessions and what is left out
    std::optional<int> start;  ///< minutes since midnight
    std::optional<Time>
        work_from;  ///< so long before the start the work can begin, and nothing is done before; above 0
    std::optional<Temperature>
        water;                 ///< that soaks and wets; as the strategy's where not given, 15 degC where it has none
    std::vector<KitItem> kit;  ///< empty: not known
    std::optional<Venue> venue;
};

/// Plans a session: what goes in when, what to do before, what all of it takes, and which rules it breaks. The amounts
/// are those of `unroll_strategy` for one day; the cost is for all sessions, by `cost_strategy`.
/// Throws what those throw; InputError for names in the venue's rules that are not on the shelf; Error (answer_is_no,
/// "no-time") where the work does not fit between `work_from` and the start, with what to skip or soften.
SessionPlan plan_session(const Shelf& shelf, const Strategy& strategy, const StockOnHand& stock,
                         const PlanRequest& request);

}  // namespace baitwright
