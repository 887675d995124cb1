#pragma once

#include <optional>

#include "answers/drop/drop_portion.h"

namespace baitwright {

/// Where and when a portion breaks; `whole` where it reaches the bed first.
struct Break {
    FallPoint point;
    bool whole = false;
    bool raft = false;  ///< lighter than water as a whole: it stays at the surface, and its grains sink as they can
    Time holds;         ///< in all; nothing where it breaks at once
    double fit = 1;     ///< how much longer it held than its default: from a person's own look, or a draw
};

/// Nothing where it floats for good.
std::optional<Break> break_of(const DropSetup& setup, const DropFactors& factors);

/// From rest at the surface, with the drag of this look.
std::optional<FallPoint> fall_of(const DropSetup& setup, const DropFactors& factors, Length depth, Time time);

/// Until then nothing that has not broken will.
inline constexpr Time never_breaks = 3600.0 * second;

}  // namespace baitwright
