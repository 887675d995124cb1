#pragma once

#include <string>
#include <vector>

#include "answers/cost_strategy.h"

namespace baitwright {

/// Two bars a strategy, what is used (with its 5-95 % range) and what is to pay, as a picture in SVG 1.1: text is text,
/// a title and a description say the same in words, and the bars differ by pattern, not by colour. Strategies without
/// any price have no bars. All must be priced in one currency.
std::string cost_plot_svg(const std::vector<StrategyCost>& costs);

}  // namespace baitwright
