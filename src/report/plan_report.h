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
/// "casters", "casters and hemp": what goes in together with that feed, in one cup; empty where nothing does.
std::string together_with(const SessionPlan& plan, std::size_t feed);
/// "180 ml in each of 2 cups, with casters": so much of a feed that goes in together with others.
std::string shared_portion(const SessionPlan& plan, std::size_t feed);

Told rest_told(const SessionPlan& plan, const RestOfSession& rest);
/// The plan with `now` filled.
Json rest_json(const SessionPlan& plan, const RestOfSession& rest);

}  // namespace baitwright
