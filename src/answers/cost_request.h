#pragma once

#include <cstdint>
#include <string>

#include "answers/strategy_request.h"
#include "answers/usual_seed.h"

namespace baitwright {

/// A question to `cost_strategy`.
struct CostRequest {
    StrategyRequest what_if;
    std::string on;  ///< the day, ISO 8601: older prices than a year before it are stale
    std::uint64_t seed = usual_seed;
    enum class Ranges { drawn, left_out };
    Ranges ranges = Ranges::drawn;
};

}  // namespace baitwright
