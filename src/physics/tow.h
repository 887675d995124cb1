#pragma once

#include "quantities/quantity.h"

namespace baitwright {

/// How a drift changes from the top of the water to the bed.
enum class TowProfile {
    straight,  ///< linear from top to bottom, as told
    lake,      ///< a wind over closed water: what the top carries one way, the deep carries back
    river,     ///< logarithmic over a rough bed
};

/// Water drifting sideways. With s the share of depth and U the speed at the top:
///     straight  U + s (bottom - U)
///     lake      U (1 - s)(1 - 3 s): nothing at the bed, and no net flow, as closed water must have it
///     river     U (1 + ln(1 - s)/ln(depth/k)), k = 5 mm; nothing below where that is 0: never backwards.
/// Below zero is the other way.
/// **Source**: lake: constant eddy viscosity under a steady wind (from memory; the only parabola with U at the top, 0
/// at the bed and no net flow); river: law of the wall (from memory), k a default for gravel and weed. **Valid for**:
/// depths above 2 cm. **Test**: `tests/physics/tow_test.cpp`.
struct Tow {
    Speed top, bottom;
    Length depth;  ///< of the water
    TowProfile profile = TowProfile::straight;

    [[nodiscard]] bool still() const { return top == Speed{} && bottom == Speed{}; }
    [[nodiscard]] Speed at(Length below_surface) const;
    /// Over the water between two depths, on average.
    [[nodiscard]] Speed mean_between(Length from, Length to) const;
    [[nodiscard]] Speed mean_below(Length below_surface) const { return mean_between(below_surface, depth); }

private:
    [[nodiscard]] double flow_above(double share) const;  // integral of u from the top, in m/s
};

}  // namespace baitwright
