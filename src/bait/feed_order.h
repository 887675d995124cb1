#pragma once

#include <cstddef>
#include <vector>

#include "bait/strategy.h"
#include "quantities/fault.h"

namespace baitwright {

/// The feeds that one waits for, by what it says in `after`: each other feed that is called so or holds it, or the one
/// at that place ("feed 1"). Places from 0, rising, never its own; none where it waits for nothing.
std::vector<std::size_t> feeds_before(const Strategy& strategy, std::size_t feed);

/// What is wrong with the order of the feeds, by the subjects of `strategy_names.h`: "unknown-feed", none is called so;
/// "never-used-up", it is fed to the end of the session or as bites slow; "circle", they wait for each other.
std::vector<Fault> feed_order_faults(const Strategy& strategy);

}  // namespace baitwright
