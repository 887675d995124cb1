#pragma once

#include <string>
#include <vector>

#include "answers/money/cost_strategy.h"

namespace baitwright {

/// Two bars a strategy as a picture (SVG): what is used, dark, with its 5-95 % range, and what is to pay, light; each
/// with its amount in words. Strategies without any price have no bars. All must be priced in one currency.
std::string cost_plot(const std::vector<StrategyCost>& costs);

}  // namespace baitwright
