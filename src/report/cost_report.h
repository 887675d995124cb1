#pragma once

#include <string>

#include "answers/money/compare_strategies.h"
#include "report/json.h"
#include "report/rows.h"
#include "report/told.h"

namespace baitwright {

Told cost_told(const StrategyCost& cost);
Told compare_told(const StrategyComparison& comparison);

/// `cost` gives one strategy by the keys of `compare`.
Json cost_json(const StrategyCost& cost);
Json compare_json(const StrategyComparison& comparison);

/// One row an ingredient and pack of each strategy, with its name.
Rows cost_rows(const std::vector<StrategyCost>& costs);

/// Each once, whichever strategies it is of.
std::vector<Warning> all_warnings(const std::vector<StrategyCost>& costs);

/// What makes the difference, a sentence for each strategy dearer than the cheapest.
std::vector<std::string> difference_sentences(const StrategyComparison& comparison);

/// {name, size_g or size_ml (the other null), count, price_minor of one, total_minor, shop, on}.
Json bought_json(const PackBought& bought);

/// "open carpet", or "open carpet, 3 sessions".
std::string cost_name(const StrategyCost& cost);

/// Why the sums are the least that they can be: "1 thing has no price". Empty where nothing is left out.
std::string not_in_sum_text(const StrategyCost& cost);

/// "£3.40 to £4.10", what is used 9 times in 10; empty where that is not known, or both ends are told alike.
std::string used_range_text(const StrategyCost& cost);

/// "£3.40" for unrounded minor units.
std::string shown_money(double minor, const Currency& currency);

}  // namespace baitwright
