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
};

/// Of what reaches the bed whole: there it falls apart within 1.5 of its diameters. A squeezed ball wears on its way,
/// as a lump does, and leaves what it loses to sink alone; in a current the bed's tow carries its grains on as they
/// fall from half its height.
DropFates fates_of_whole(const DropSetup& setup, const Break& at, const DropFactors& factors);

/// Of what breaks above the bed: its bound share in lumps of 0.46 and 0.38 of its width, which fall out of the cloud,
/// sail aside the more the wetter they are (0.05 of their way at h = 1.2, 0.14 at 1.7) and lose their grains as they
/// slake; the rest as single grains of the cloud; free fines shed to its wake, with an e-fold of 12 of its first widths
/// (64 where it breaks at the surface, after traps that caught 21 to 31 % and 2 to 8 % of them in the stem; Ruggaber
/// 2000 as quoted by Gensheimer, from memory).
DropFates fates_of_broken(const DropSetup& setup, const Break& at, const DropFactors& factors);

}  // namespace baitwright
