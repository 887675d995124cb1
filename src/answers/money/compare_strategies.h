#pragma once

#include <functional>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "answers/money/cost_strategy.h"

namespace baitwright {

/// What makes one strategy dearer than the cheapest, and which ingredient makes most of that.
struct CostDifference {
    std::size_t dearer = 0, cheaper = 0;  ///< places among the costs
    std::int64_t more_minor = 0;
    std::string ingredient;
    std::int64_t ingredient_more_minor = 0;
    Mass here, there;  ///< what the dearer and the cheaper take of it
};

/// Strategies side by side, in the order given, each as `cost_strategy` has it: the order changes nothing else.
struct StrategyComparison {
    std::vector<StrategyCost> costs;
    const Currency* currency = nullptr;
    std::optional<std::size_t> cheapest_used, cheapest_outlay;  ///< among those whose prices are all known
    std::vector<CostDifference>
        differences;  ///< each complete one against the cheapest used, but where they cost the same
};

/// What-ifs hold for all of them: words become whole names, so that they mean the same in every strategy, and what is
/// left out or priced must be `fed` by one at least. Throws UsageError "not-in-strategy" and "several-fit".
StrategyRequest what_if_of_all(StrategyRequest what_if, const std::set<std::string>& fed);

/// So many strategies, each costed by `cost_of` in its own currency; and once more in the currency of all
/// (`answer_currency` over all that any of them takes) where that is another.
using CostOf = std::function<StrategyCost(std::size_t strategy, const Currency* in)>;
std::vector<StrategyCost> costs_in_one_currency(std::size_t strategies, const CostOf& cost_of, const Currency* usual);

/// The same of strategies of which `fed` is all that any of them feeds (`what_if_of_all`): each by itself, for its own
/// number of sessions.
using CostOne = std::function<StrategyCost(std::size_t strategy, const CostRequest& request)>;
std::vector<StrategyCost> costs_side_by_side(const std::vector<int>& times, const std::set<std::string>& fed,
                                             CostRequest request, const CostOne& cost_one);

/// Each was costed as if it were the only one, all in one currency: they share neither packs nor stock.
StrategyComparison compare_strategies(std::vector<StrategyCost> costs);

/// The ingredient that makes most of what a strategy uses; nothing where nothing has a price.
const CostLine* dearest_line(const StrategyCost& cost);

}  // namespace baitwright
