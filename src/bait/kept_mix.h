#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "bait/stock.h"
#include "quantities/date.h"
#include "quantities/quantity.h"

namespace baitwright {

/// Damp mix that was put by, cold or frozen: bait that is made already.
struct KeptMix {
    std::string of;  ///< the mix
    Mass mass;       ///< wet, above zero
    StockState state = StockState::cold;
    std::string feel = {};                 ///< that it was wetted to; empty: the mix's own
    std::optional<Date> best_before = {};  ///< not known: it is used after all whose date is known
    std::optional<Date> kept_on = {};      ///< before that day there is none of it
    std::int64_t lot = 0;                  ///< of the shed; 0 where it was told
};

/// Whether it is bait on that day; what is told without a day is.
inline bool is_good_on(const KeptMix& kept, const std::optional<Date>& on) {
    return !on || ((!kept.best_before || *kept.best_before >= *on) && (!kept.kept_on || *kept.kept_on <= *on));
}

}  // namespace baitwright
