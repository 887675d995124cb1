#pragma once

#include <algorithm>
#include <cmath>
#include <optional>

#include "quantities/quantity.h"

namespace baitwright {

/// A lump of feed that sinks and wears away from outside, so that its surface goes at a rate that keeps d^2 falling
/// evenly:
///     d^2 = d0^2 (1 - t/T),   mass left (1 - t/T)^1.5,   speed w0 (1 - t/T)^0.25,
///     way = 0.8 w0 T (1 - (1 - t/T)^1.25),
/// T being how long a lump of its size holds (T goes with d^2, as a ball's does). **Source**: ours; a rough sphere
/// sinks with the root of its size. **Valid for**: T > 0. **Test**: `tests/physics/slaking_lump_test.cpp`.
struct SlakingLump {
    Speed speed;  ///< as it begins
    Time holds;

    /// The share of its mass that is left after a time.
    [[nodiscard]] double left(Time time) const {
        const double rest = std::max(0.0, 1 - time / holds);
        return rest * std::sqrt(rest);
    }
    /// When so much of its mass has gone.
    [[nodiscard]] Time gone(double share) const {
        const double root = std::cbrt(std::max(0.0, 1 - share));
        return (1 - root * root) * holds;
    }
    [[nodiscard]] Length way(Time time) const {
        const double rest = std::max(0.0, 1 - time / holds), root = std::sqrt(std::sqrt(rest));
        return 0.8 * (1 - rest * root) * (speed * holds);
    }
    /// When it has sunk so far; nothing where it is gone before.
    [[nodiscard]] std::optional<Time> sinks(Length so_far) const {
        const double rest = 1 - so_far / (0.8 * (speed * holds));
        if (!(rest > 0)) return std::nullopt;
        return (1 - std::pow(rest, 0.8)) * holds;
    }
};

}  // namespace baitwright
