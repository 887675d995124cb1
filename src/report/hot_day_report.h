#pragma once

#include "answers/plan/plan_answer.h"
#include "report/card_sheet.h"
#include "report/json.h"
#include "report/told.h"

/// What a hot day asks of a plan: nothing of it where the plan has no `hot_day`.
namespace baitwright {

/// "Keep it damp": what to spray when, what to wet later, what to keep cool.
Told hot_day_told(const SessionPlan& plan);
/// The same in brief, to tick off.
CardSection damp_section(const SessionPlan& plan);
/// Null where there is none.
Json hot_day_json(const SessionPlan& plan);

}  // namespace baitwright
