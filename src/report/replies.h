#pragma once

#include "answers/blend/swap_answer.h"
#include "answers/drop/drop_answer.h"
#include "answers/mix/dose_amounts.h"
#include "answers/mix/dry_out.h"
#include "answers/mix/mix_answer.h"
#include "answers/mix/right_a_mix.h"
#include "answers/money/compare_strategies.h"
#include "answers/money/shop_sessions.h"
#include "answers/pellets/soak_answer.h"
#include "answers/plan/plan_answer.h"
#include "answers/plan/rest_of_session.h"
#include "answers/shared/stock_answer.h"
#include "answers/strategy/advise_answer.h"
#include "report/change_report.h"
#include "report/reply.h"

/// What is said to each question, in every form. Whether the answer is no, is settled here and nowhere else.
namespace baitwright {

/// How much is told of a feed in the water.
enum class DropTelling { brief, full };

Reply mix_reply(MixAnswer answer);
Reply tub_reply(TubAnswer answer);
Reply dose_reply(DoseAnswer answer);
Reply dry_reply(DryAnswer answer);
Reply soak_reply(SoakAnswer answer);
Reply drop_reply(DropAnswer answer, DropTelling telling);
Reply cost_reply(StrategyCost cost);
Reply compare_reply(StrategyComparison comparison);
Reply shop_reply(ShopAnswer answer);
Reply plan_reply(SessionPlan plan);
Reply rest_reply(SessionPlan plan, RestOfSession rest);
Reply advise_reply(AdviseAnswer answer);
Reply swap_reply(SwapAnswer answer);

/// `command` is the command's name: "stock buy", "recipe add".
Reply stock_change_reply(const std::string& command, StockChangeAnswer answer);
Reply change_reply(const std::string& command, const std::vector<NamedChange>& changes);

/// Side by side, one or more.
Reply soak_comparison_reply(std::vector<SoakAnswer> answers);
Reply drop_comparison_reply(std::vector<DropAnswer> answers);

}  // namespace baitwright
