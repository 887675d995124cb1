#include "report/plan_shopping.h"

#include <fmt/format.h>

#include "answers/shared/stale_prices.h"
#include "quantities/units.h"
#include "report/cost_report.h"
#include "report/display.h"
#include "report/text_table.h"

namespace baitwright {

namespace {

constexpr Mass least_lacking = 1e-6 * gram;  // less is what rounding leaves of a need that the shed meets

const char* why_no_price(const StrategyCost& cost, const std::string& name) {
    return priced_nowhere({name}, cost.elsewhere).empty() ? "priced in another currency" : "no price";
}

}  // namespace

std::string shopping_text(const StrategyCost& cost) {
    std::string text;
    for (const PackBought& bought : cost.packs) {
        text +=
            fmt::format("{}{} x {} {}", text.empty() ? "" : "; ", bought.count, shown_pack(bought.pack), bought.name);
    }
    for (const CostLine& line : cost.lines) {
        const Mass lacking = line.need - line.from_stock;
        if (line.outlay || !(lacking > least_lacking)) continue;
        text += fmt::format("{}{} of {} ({})", text.empty() ? "" : "; ", shown_weighed(lacking), line.name,
                            why_no_price(cost, line.name));
    }
    return sentence(text.empty() ? "nothing; it is all in the shed" : text);
}

std::string plan_cost_text(const SessionPlan& plan) {
    const StrategyCost& cost = plan.cost;
    if (!cost.currency) return sentence("no sum; " + not_in_sum_text(cost));
    const auto money = [&](std::int64_t minor) { return shown_money(static_cast<double>(minor), *cost.currency); };
    std::string text = fmt::format("{}{} used, {} to pay", cost.complete() ? "" : "at least ", money(cost.used_minor),
                                   money(cost.outlay_minor));
    if (plan.times > 1) text += fmt::format(", for {} sessions", plan.times);
    if (plan.people > 1)
        text += fmt::format("; {} used for each angler", shown_money(cost.per_angler(), *cost.currency));
    return sentence(text + (cost.complete() ? "" : "; " + not_in_sum_text(cost)));
}

}  // namespace baitwright
