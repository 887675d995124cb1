#pragma once

#include "answers/drop/drop_request.h"
#include "answers/drop/feed_in_water.h"
#include "bait/learnt.h"
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
    Hold how = Hold::heaped;
    Ratio wetness, binder;
    StillWater water;
    Tow tow;
    const DropRequest* request;
    LearntMix learnt = {};   ///< of the mix: how it holds and lies; what was seen just now goes before
    DropFactors usual = {};  ///< the medians, with what was learnt in them
};

/// A share of one class of grains that came down one way.
struct Settled {
    std::size_t grain;  ///< its place among the feed's classes
    double share;       ///< of the dry mass
    bool in_lump;       ///< part of the way, or all of it
    GrainsFate fate;
};

}  // namespace baitwright
