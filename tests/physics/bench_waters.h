#pragma once

#include "physics/settling.h"
#include "physics/tow.h"
#include "quantities/units.h"

namespace baitwright {

/// The water of the reference rows: 20 degC.
inline const StillWater& bench_water() {
    static const StillWater water(Density::from_si(998.207), Viscosity::from_si(1.0016e-3));
    return water;
}

/// So deep, and no tow.
inline Tow still(double metres) {
    return {{}, {}, metres * metre};
}

}  // namespace baitwright
