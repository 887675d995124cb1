#pragma once

#include <span>
#include <utility>
#include <vector>

#include "answers/drop/drop_answer.h"
#include "answers/drop/drop_portion.h"

namespace baitwright {

struct DropOutcome {
    DropSketch sketch;
    bool floats = false;  ///< for good
    Time raft;            ///< until half of what floats at first has gone down
    std::vector<Settled> settled;
};

/// Follows the portion down: it falls as one, breaks into lumps and grains, sinks as a cloud that loses its grains, or
/// lands whole.
DropOutcome follow(const DropSetup& setup, const DropFactors& factors);

/// Its way down as one, from the surface to so deep; a feeder hangs on its line and drops straight.
std::vector<FallMark> fall_to(const DropSetup& setup, Length depth);

/// An even round patch, and how much lies in it.
struct EvenPatch {
    Length radius;
    double share;
};

/// The width about the middle of all of them that holds the share q of their weight.
Length width_of(std::span<const EvenPatch> patches, double q);

/// The value at the share q, linear between the mid-points of the classes.
double point_of(std::vector<std::pair<double, double>> value_and_share, double q);

}  // namespace baitwright
