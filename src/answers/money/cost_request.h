#pragma once

#include <cstdint>
#include <optional>

#include "answers/shared/usual_seed.h"
#include "answers/strategy/strategy_request.h"
#include "quantities/date.h"
#include "quantities/money.h"

namespace baitwright {

/// A question to `cost_strategy`.
struct CostRequest {
    StrategyRequest what_if;
    std::optional<Date> on;                    ///< the day: older prices than a year before it are stale
    const Currency* usual_currency = nullptr;  ///< answer in it where anything is priced in it
    const Currency* currency = nullptr;        ///< answer in no other, whatever is priced in it
    std::uint64_t seed = usual_seed;
    enum class Ranges { drawn, left_out };
    Ranges ranges = Ranges::drawn;
};

}  // namespace baitwright
