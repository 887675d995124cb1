#pragma once

#include <vector>

#include "answers/money/shop_request.h"
#include "answers/strategy/strategy_request.h"
#include "questions/arguments.h"
#include "questions/cost_question.h"

namespace baitwright {

/// When the sessions are. Throws UsageError, naming the flag, as all of these do.
SessionDays session_days(const Arguments& arguments, Date today);

/// Where one shops, what it costs to have it brought, and what may be left over.
ShopRequest shop_request(const Arguments& arguments, Date today);

/// How many anglers there are.
StrategyRequest shop_what_if(const Arguments& arguments);

/// The strategies that are named, at most 400 sessions of them together.
std::vector<TimedWord> timed_words(const Arguments& arguments);

}  // namespace baitwright
