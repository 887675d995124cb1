#pragma once

#include <optional>

#include "bait/strategy.h"
#include "quantities/quantity.h"

namespace baitwright {

/// Whether anything is said of the air.
inline bool is_known(const AirSetting& air) {
    return air.temperature || air.humidity || air.wind || air.sun;
}

/// A question to `hot_day`. What of the air is not said is as `DryRequest` has it.
struct HotDayRequest {
    AirSetting air;
    std::optional<Area> tub;  ///< the open face of one
};

}  // namespace baitwright
