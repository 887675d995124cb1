#pragma once

#include "quantities/quantity.h"

namespace baitwright {

/// Water drifting sideways: so fast at the top and at the bottom, linear between. Below zero is the other way.
struct Tow {
    Speed top, bottom;
    Length depth;  ///< of the water

    [[nodiscard]] Speed at(Length below_surface) const { return top + (below_surface / depth) * (bottom - top); }
    /// Over the water from there to the bed, on average.
    [[nodiscard]] Speed mean_below(Length below_surface) const { return 0.5 * (at(below_surface) + bottom); }
};

}  // namespace baitwright
