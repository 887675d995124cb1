#pragma once

#include <string>

#include "answers/plan/plan_answer.h"
#include "answers/plan/rest_of_session.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

Told plan_told(const SessionPlan& plan);
Json plan_json(const SessionPlan& plan);

/// The rest of a session, on the day: told alone, for who asks has the bait before him.
Told rest_told(const SessionPlan& plan, const RestOfSession& rest);
/// The plan with `now` filled.
Json rest_json(const SessionPlan& plan, const RestOfSession& rest);

}  // namespace baitwright
