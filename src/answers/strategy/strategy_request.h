#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/kept_mix.h"
#include "bait/pack.h"
#include "quantities/quantity.h"

namespace baitwright {

/// What if? Everything that is not given is as the strategy has it.
struct StrategyRequest {
    /// One pack in place of all that are known of an ingredient.
    struct Price {
        std::string of;
        Pack pack;
    };
    std::optional<Time> length;
    std::optional<std::string> feel;   ///< of every feed that is wetted
    std::vector<std::string> without;  ///< ingredients or mixes; what is left takes their room in proportion
    std::vector<Price> prices;
    enum class Absent { refused, passed_over };
    Absent absent = Absent::refused;  ///< what is left out or priced and not fed at all
    int people = 1;                   ///< each feeds all of it
    int times = 1;                    ///< sessions alike
    Ratio reused;                     ///< of the damp mix of each session, frozen and used at the next: not made again
    std::vector<KeptMix> kept;        ///< used first, in this order, on the days on which it is good
    std::optional<Date> on;           ///< of the first session; without it all that is kept is good
    int days_apart = 7;               ///< from each session to the next
};

}  // namespace baitwright
