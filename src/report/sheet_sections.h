#pragma once

#include <vector>

#include "answers/plan/plan_answer.h"
#include "report/card_sheet.h"

/// The sections of a session's sheet. One without rows is left out.
namespace baitwright {

/// A section for each tub, and one for what goes in as it is or on the hook: parts in grams and pints, water in its
/// steps.
std::vector<CardSection> weigh_sections(const SessionPlan& plan);
CardSection soak_section(const SessionPlan& plan);
CardSection before_section(const SessionPlan& plan);
/// A line a feed, with a box for each of its put-ins; for each hour where they are too many.
CardSection water_section(const SessionPlan& plan);
CardSection total_section(const SessionPlan& plan);
CardSection mind_section(const SessionPlan& plan);

}  // namespace baitwright
