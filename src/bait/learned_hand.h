#pragma once

#include <vector>

#include "bait/resolved_mix.h"
#include "bait/wetness.h"

/// What the marks that a person measured tell of the marks that they did not.
namespace baitwright {

/// Of A; and of the gap G = B - A, which is measured where B is.
MarkOrigin absorption_origin(const SolidPart& part);
MarkOrigin slump_origin(const SolidPart& part);

/// The relative spread's sigma^2 of a measured mark beyond the day's, which repeats of a measurement hold already.
double variance_beyond_day(const Property<Ratio>& mark);

/// The hand after what was measured of the bags in the mix. Each mark measured in place of a usual one is an
/// observation r = ln(measured/usual) = ln P + [from memory] ln C + e, both at one moisture; e holds the usual mark's
/// own spread, the bag's moisture (which A and G of a bag share), and what the measurement's spread goes beyond a
/// day's. The posterior is that of a linear model with normal errors, by its 2 x 2 information matrix: without C and
/// with e independent ln P ~ N(sum(r/s^2)/L, 1/L) with L = 1/sP^2 + sum(1/s^2).
/// **Source**: conjugate normal prior of a linear model (Lindley & Smith 1972, from memory). **Valid for**: marks above
/// 0.02 g/g; smaller ones teach nothing. **Test**: `tests/bait/learned_hand_test.cpp`, against NumPy's solution of the
/// whole Gaussian system.
Hand learned_hand(const std::vector<SolidPart>& solids);

/// A and B of a part with the hand reckoned in: measured marks stay; of a bag whose A alone was measured, B is that A
/// and the usual gap. As on the shelf where nothing was learned. A stays below B.
WaterMarks known_marks(const SolidPart& part, const Hand& hand);

}  // namespace baitwright
