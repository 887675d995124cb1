#pragma once

#include <cmath>

#include "quantities/quantity.h"

namespace baitwright {

/// K at a patch a metre wide: how the water's own stirring spreads what hangs or settles in it.
inline constexpr double patch_stirring = 7.5e-5;  // m2/s at 1 m

/// The radius of an even disc after a time in calm water. Its variance along each axis is R^2/4 and grows by 2 K t, so
/// dR^2/dt = 8 K; K grows with the width as Okubo's law of four thirds has it, K = 7.5e-5 m2/s (2 R / 1 m)^(4/3), so
///     R^(2/3) = r^(2/3) + (8/3) 2^(4/3) K t.
/// **Source**: Okubo 1971, Deep-Sea Research 18 (from memory: about 1e-4 m2/s at a metre); the number is a default.
/// **Valid for**: radii of centimetres to metres. **Test**: `tests/physics/patch_test.cpp`, against SciPy's integrator.
inline Length spread_patch(Length radius, Time time) {
    const double four_thirds = 2 * std::cbrt(2.0);  // 2^(4/3)
    const double root = std::cbrt(radius.si());
    const double grown = root * root + 8.0 / 3 * four_thirds * patch_stirring * time.si();
    return Length::from_si(grown * std::sqrt(grown));
}

}  // namespace baitwright
