#pragma once

#include <vector>

#include "answers/drop/drop_break.h"

namespace baitwright {

/// Fines that do not come down with the rest: how much, and when they have landed.
struct SlowFines {
    double share;  ///< of the dry mass
    double lands;  ///< s; infinite where they never do
};

/// What becomes of all the grains and fines of a portion that broke there.
struct DropFates {
    std::vector<Settled> settled;  ///< what floats for good among it, with a fate that does not sink
    std::vector<SlowFines> fines;
    double lands_as_one = 0;  ///< the share of it that reaches the bed in one piece
};

/// Of what becomes of it, one of three.
/// A squeezed ball wears from outside from where it goes in, as a lump does, whether it reaches the bed or is gone
/// before: what comes off sinks alone from there, and what is left when it lands falls apart within 1.5 of the ball's
/// diameters; in a current its grains drift on as they fall from half its height. A cupful or a feeder that reaches the
/// bed lands whole, and falls apart there likewise. Of what breaks above the bed: its bound share goes in lumps of 0.46
/// and 0.38 of its width, which fall out of the cloud, sail aside the more the wetter they are (0.05 of their way at h
/// = 1.2, 0.14 at 1.7) and lose their grains as they slake; the rest as single grains of the cloud; free fines shed to
/// its wake, with an e-fold of 12 of its first widths (64 where it breaks at the surface, after traps that caught 21 to
/// 31 % and 2 to 8 % of them in the stem; Ruggaber 2000 as quoted by Gensheimer, from memory).
DropFates fates_of(const DropSetup& setup, const Break& at, const DropFactors& factors);

}  // namespace baitwright
