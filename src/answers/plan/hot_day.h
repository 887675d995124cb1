#pragma once

#include <optional>
#include <vector>

#include "answers/plan/hot_day_answer.h"
#include "answers/plan/hot_day_request.h"
#include "answers/plan/plan_answer.h"
#include "bait/feel.h"

namespace baitwright {

/// What the sun and the air do to the open tubs of a session from its start on, of which `plan` has the put-ins and
/// batches, and what to do about it. A tub dries as in `dry_out`; what is left in it is drawn together to a layer of no
/// less than `thinnest_layer`. It is sprayed (`set_sprays`) where it would leave its feel before the last of it goes
/// in, or lose more than a tenth of its water, and 10 g an hour at least. Where that is more than two hours by the
/// clock and so much, what goes in in their second half stays dry until its rest ends when it is needed. Everything in
/// the middle between still and moving air. Throws UsageError where the tub, the air, the humidity or the wind is out
/// of range. **Source**: common practice, no source, but for the drying. **Test**: `tests/answers/hot_day_test.cpp`.
HotDay hot_day(const std::vector<Feel>& feels, const UnrolledStrategy& session, const SessionPlan& plan,
               const HotDayRequest& request);

/// What suffers in the warm, of what goes in and on the hook, soaked or as it is.
std::vector<CoolThing> kept_cool(const UnrolledStrategy& session, const SessionPlan& plan);

/// What to know of live feed in such air, where there is some.
std::optional<Warning> live_feed_warning(const HotDay& hot);

}  // namespace baitwright
