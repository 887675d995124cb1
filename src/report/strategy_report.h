#pragma once

#include <string>
#include <vector>

#include "bait/strategy.h"
#include "report/json.h"

namespace baitwright {

std::string strategy_list_text(const std::vector<Strategy>& strategies);
Json strategy_list_json(const std::vector<Strategy>& strategies);
std::string strategy_text(const Strategy& strategy);
Json strategy_json(const Strategy& strategy);

}  // namespace baitwright
