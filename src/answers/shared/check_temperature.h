#pragma once

#include "quantities/fault.h"
#include "quantities/temperature.h"

namespace baitwright {

/// Fresh water outside 0 to 60 degC is ice, or scalds hands and cooks the bait: throws UsageError "out-of-range".
inline void check_water_temperature(Temperature water) {
    if (!(water >= Temperature::from_celsius(0) && water <= Temperature::from_celsius(60)))
        throw UsageError("out-of-range", "the water temperature must be from 0 to 60 degC",
                         "for example --water-temp 12degC");
}

}  // namespace baitwright
