#pragma once

#include "answers/plan/plan_answer.h"
#include "answers/plan/plan_request.h"
#include "bait/shelf.h"

namespace baitwright {

/// Plans a session: what goes in when, what to do before, what all of it takes, and which rules it breaks. The amounts
/// are those of `unroll_strategy` for one day; the cost is for all sessions, by `cost_strategy`.
/// Throws what those throw; InputError for names in the venue's rules that are not on the shelf; Error (answer_is_no,
/// "no-time") where the work does not fit between `work_from` and the start, with what to skip or soften.
SessionPlan plan_session(const Shelf& shelf, const Strategy& strategy, const StockOnHand& stock,
                         const PlanRequest& request);

}  // namespace baitwright
