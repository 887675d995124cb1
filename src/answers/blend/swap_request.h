#pragma once

#include <optional>
#include <string>
#include <vector>

#include "quantities/money.h"
#include "quantities/quantity.h"

namespace baitwright {

struct SwapRequest {
    std::vector<std::string> without;  ///< ingredients that ran out
    Ratio rest_may_move;               ///< by so much of itself each other share may rise or fall; 0 keeps them all
    int at_most = 2;                   ///< ingredients that stand in
    const Currency* usual_currency = nullptr;      ///< priced in it where anything of it is
    std::optional<std::vector<std::string>> from;  ///< names of what may stand in; nothing: all that the library holds
};

}  // namespace baitwright
