#pragma once

#include "answers/drop/drop_answer.h"
#include "answers/drop/drop_request.h"
#include "answers/drop/feed_in_water.h"
#include "physics/falling_body.h"
#include "physics/particle_cloud.h"

namespace baitwright {

/// What the defaults are multiplied by in one look.
struct DropFactors {
    double hold = 1, breaking = 1, settling = 1, spread = 1, drag = 1;
};

/// A portion ready to go in: its body, and what it is made of.
struct DropSetup {
    FeedInWater feed;
    Mass dry;
    FallingBody body;
    Ratio wetness, binder;
    StillWater water;
    Tow tow;
    const DropRequest* request;
};

/// The fate of each class of grains, in the order of the feed's.
struct DropOutcome {
    DropSketch sketch;
    bool floats = false;
    std::vector<GrainsFate> fates;
};

/// Follows the portion down: it falls as one, breaks, sinks as a cloud that loses its grains, or lands whole.
DropOutcome follow(const DropSetup& setup, const DropFactors& factors);

/// Its way down as one, from the surface to so deep; a feeder hangs on its line and drops straight.
std::vector<FallMark> fall_to(const DropSetup& setup, Length depth);

/// The width of the round patches, each even over its own, that together hold the share q of their weight.
Length width_of(const std::vector<GrainsFate>& fates, const std::vector<double>& shares, double q);

/// The value at the share q, linear between the mid-points of the classes.
double point_of(std::vector<std::pair<double, double>> value_and_share, double q);

}  // namespace baitwright
