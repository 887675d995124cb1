#pragma once

#include <vector>

#include "bait/strategy.h"
#include "report/json.h"
#include "report/told.h"

namespace baitwright {

Told strategy_list_told(const std::vector<Strategy>& strategies);
Json strategy_list_json(const std::vector<Strategy>& strategies);
Told strategy_told(const Strategy& strategy);
Json strategy_json(const Strategy& strategy);

}  // namespace baitwright
