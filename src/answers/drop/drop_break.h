#pragma once

#include <optional>
#include <span>
#include <vector>

#include "answers/drop/drop_portion.h"

namespace baitwright {

/// Where and when a portion breaks, or has worn away; `whole` where it reaches the bed first.
struct Break {
    FallPoint point;
    bool whole = false;
    bool raft = false;   ///< lighter than water as a whole: it stays at the surface, and its grains sink as they can
    bool wears = false;  ///< a squeezed ball: it goes from outside as it sinks, and at last is gone
    Time waits;          ///< at the surface, before it sinks and wears
    Time holds;          ///< in all; nothing where it breaks at once
    double fit = 1;      ///< how much longer it held than its default: from a person's own look, or a draw
};

/// Nothing where it floats for good.
std::optional<Break> break_of(const DropSetup& setup, const DropFactors& factors);

/// From rest at the surface, with the drag of this look.
std::optional<FallPoint> fall_of(const DropSetup& setup, const DropFactors& factors, Length depth, Time time);

/// The same fall at several times, in their order, as if there were no bed.
std::vector<FallPoint> falls_of(const DropSetup& setup, const DropFactors& factors, std::span<const Time> times);

/// Until then nothing that has not broken will.
inline constexpr Time never_breaks = 3600.0 * second;

}  // namespace baitwright
