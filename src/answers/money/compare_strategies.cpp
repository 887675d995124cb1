#include "answers/money/compare_strategies.h"

#include <algorithm>
#include <map>
#include <stdexcept>
#include <tuple>

#include "answers/strategy/named_in_strategy.h"
#include "bait/one_currency.h"

namespace baitwright {

namespace {

/// Null where nothing of any has a price.
const Currency* currency_of(const std::vector<StrategyCost>& costs) {
    const Currency* currency = nullptr;
    for (const StrategyCost& cost : costs) {
        if (!cost.currency) continue;
        if (currency && !(*currency == *cost.currency)) throw std::logic_error("strategies costed in two currencies");
        currency = cost.currency;
    }
    return currency;
}

/// The least by that amount; of equal ones the first by name, so that the order given does not matter.
template <class Amount>
std::optional<std::size_t> least(const std::vector<StrategyCost>& costs, Amount amount) {
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < costs.size(); ++i) {
        if (!costs[i].complete() || !costs[i].currency) continue;
        const auto key = [&](std::size_t at) {
            return std::make_tuple(amount(costs[at]), costs[at].unrolled.name, costs[at].unrolled.times);
        };
        if (!found || key(i) < key(*found)) found = i;
    }
    return found;
}

struct Use {
    std::int64_t minor = 0;
    Mass mass;
};

std::map<std::string, Use> uses_of(const StrategyCost& cost) {
    std::map<std::string, Use> uses;
    for (const CostLine& line : cost.lines) uses[line.name] = {line.used ? line.used->minor() : 0, line.need};
    return uses;
}

CostDifference difference(const std::vector<StrategyCost>& costs, std::size_t dearer, std::size_t cheaper) {
    CostDifference found{dearer, cheaper, costs[dearer].used_minor - costs[cheaper].used_minor, {}, 0, {}, {}};
    std::map<std::string, Use> here = uses_of(costs[dearer]), there = uses_of(costs[cheaper]);
    for (const auto& [name, use] : here) {
        const std::int64_t more = use.minor - there[name].minor;
        if (more <= found.ingredient_more_minor) continue;
        found.ingredient = name;
        found.ingredient_more_minor = more;
        found.here = use.mass;
        found.there = there[name].mass;
    }
    return found;
}

}  // namespace

StrategyRequest what_if_of_all(StrategyRequest what_if, const std::set<std::string>& fed) {
    for (std::string& word : what_if.without) word = named_in(word, fed, "the strategies feed");
    for (StrategyRequest::Price& price : what_if.prices) price.of = named_in(price.of, fed, "the strategies take");
    what_if.absent = StrategyRequest::Absent::passed_over;
    return what_if;
}

std::vector<StrategyCost> costs_in_one_currency(std::size_t strategies, const CostOf& cost_of, const Currency* usual) {
    std::vector<StrategyCost> costs;
    std::vector<PricedIn> priced;
    for (std::size_t i = 0; i < strategies; ++i) {
        costs.push_back(cost_of(i, nullptr));
        priced.insert(priced.end(), costs[i].priced_in.begin(), costs[i].priced_in.end());
    }
    const Currency* currency = answer_currency(priced, usual);
    for (std::size_t i = 0; i < strategies; ++i)
        if (costs[i].currency && !(*costs[i].currency == *currency)) costs[i] = cost_of(i, currency);
    return costs;
}

std::vector<StrategyCost> costs_side_by_side(const std::vector<int>& times, const std::set<std::string>& fed,
                                             CostRequest request, const CostOne& cost_one) {
    request.what_if = what_if_of_all(request.what_if, fed);
    const auto cost_of = [&](std::size_t i, const Currency* in) {
        request.what_if.times = times[i];
        request.currency = in;
        return cost_one(i, request);
    };
    return costs_in_one_currency(times.size(), cost_of, request.usual_currency);
}

StrategyComparison compare_strategies(std::vector<StrategyCost> costs) {
    StrategyComparison comparison;
    comparison.costs = std::move(costs);
    comparison.currency = currency_of(comparison.costs);
    comparison.cheapest_used = least(comparison.costs, [](const StrategyCost& cost) { return cost.used_minor; });
    comparison.cheapest_outlay = least(comparison.costs, [](const StrategyCost& cost) { return cost.outlay_minor; });
    if (!comparison.cheapest_used) return comparison;
    const std::size_t cheapest = *comparison.cheapest_used;
    for (std::size_t i = 0; i < comparison.costs.size(); ++i)
        if (i != cheapest && comparison.costs[i].complete() &&
            comparison.costs[i].used_minor > comparison.costs[cheapest].used_minor)
            comparison.differences.push_back(difference(comparison.costs, i, cheapest));
    return comparison;
}

const CostLine* dearest_line(const StrategyCost& cost) {
    const CostLine* dearest = nullptr;
    for (const CostLine& line : cost.lines)
        if (line.used && (!dearest || line.used->minor() > dearest->used->minor())) dearest = &line;
    return dearest;
}

}  // namespace baitwright
