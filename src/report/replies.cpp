#include "report/replies.h"

#include <algorithm>

#include "report/cost_report.h"
#include "report/drop_report.h"
#include "report/mix_json.h"
#include "report/mix_text.h"
#include "report/plan_report.h"
#include "report/shop_report.h"
#include "report/soak_json.h"
#include "report/soak_text.h"
#include "report/stock_json.h"
#include "report/stock_text.h"
#include "report/tub_report.h"

namespace baitwright {

Reply mix_reply(MixAnswer answer) {
    return warned(std::move(answer), mix_told, mix_json, mix_rows);
}

Reply tub_reply(TubAnswer answer) {
    return reply_of(std::move(answer), tub_told, tub_json);
}

Reply soak_reply(SoakAnswer answer) {
    Reply reply = warned(answer, soak_told, soak_json);
    reply.rows = [answer = std::move(answer)] { return soak_rows({answer}); };
    return reply;
}

Reply soak_comparison_reply(std::vector<SoakAnswer> answers) {
    const int status = status_of(answers.front().warnings);
    return reply_of(std::move(answers), soak_comparison_told, soak_comparison_json, soak_rows, status);
}

Reply drop_reply(DropAnswer answer, DropTelling telling) {
    Reply reply = warned(answer, telling == DropTelling::full ? drop_full_told : drop_told, drop_json);
    reply.rows = [answer = std::move(answer)] { return drop_rows({answer}); };
    return reply;
}

Reply drop_comparison_reply(std::vector<DropAnswer> answers) {
    return reply_of(std::move(answers), drop_comparison_told, drop_comparison_json, drop_rows);
}

Reply cost_reply(StrategyCost cost) {
    const int status = cost.complete() ? 0 : 1;
    Reply reply = reply_of<StrategyCost>(cost, cost_told, cost_json, nullptr, status);
    reply.rows = [cost = std::move(cost)] { return cost_rows({cost}); };
    return reply;
}

Reply compare_reply(StrategyComparison comparison) {
    const bool complete = std::all_of(comparison.costs.begin(), comparison.costs.end(),
                                      [](const StrategyCost& cost) { return cost.complete(); });
    Reply reply = reply_of<StrategyComparison>(comparison, compare_told, compare_json, nullptr, complete ? 0 : 1);
    reply.rows = [comparison = std::move(comparison)] { return cost_rows(comparison.costs); };
    return reply;
}

Reply shop_reply(ShopAnswer answer) {
    const int status = answer.complete() ? 0 : 1;
    return reply_of(std::move(answer), shop_told, shop_json, shop_rows, status);
}

Reply plan_reply(SessionPlan plan) {
    const int status = plan.breaches.empty() ? status_of(plan.warnings) : 1;
    return reply_of<SessionPlan>(std::move(plan), plan_told, plan_json, nullptr, status);
}

Reply rest_reply(SessionPlan plan, RestOfSession rest) {
    const auto kept = std::make_shared<const std::pair<SessionPlan, RestOfSession>>(std::move(plan), std::move(rest));
    return {0, [kept] { return rest_told(kept->first, kept->second); },
            [kept] { return rest_json(kept->first, kept->second); }};
}

Reply stock_change_reply(const std::string& command, StockChangeAnswer answer) {
    const auto kept = std::make_shared<const StockChangeAnswer>(std::move(answer));
    return {0, [kept] { return stock_change_told(*kept); },
            [kept, command] { return stock_change_json(command, *kept); }, [kept] { return stock_change_rows(*kept); }};
}

Reply change_reply(const std::string& command, const std::vector<NamedChange>& changes) {
    return {0, [changes] { return change_told(changes); },
            [command, changes] { return change_json(command, changes); }};
}

}  // namespace baitwright
