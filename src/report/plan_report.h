#pragma once

#include <string>

#include "answers/plan_answer.h"
#include "answers/rest_of_session.h"
#include "report/json.h"

namespace baitwright {

std::string plan_text(const SessionPlan& plan);
Json plan_json(const SessionPlan& plan);

/// The rest of a session, on the day: told alone, for who asks has the bait before him.
std::string rest_text(const SessionPlan& plan, const RestOfSession& rest);
/// The plan with `now` filled.
Json rest_json(const SessionPlan& plan, const RestOfSession& rest);

}  // namespace baitwright
