#pragma once

#include <vector>

#include "bait/strategy.h"

namespace baitwright {

/// In one session, all feeds together: every 10 s is 8,640 times in 24 h, and nobody feeds faster.
constexpr double most_put_ins = 20000;

/// The moments at which a feed goes in, rising: at once; or from, from + gap, ... strictly before `until` and before
/// the end of the session. A put-in's gap is 1/pace; n fish take n/pace, so that the first is after the first n. Throws
/// InputError "no-pace", or "too-many-put-ins" above `most_put_ins`.
std::vector<Time> put_in_times(const FeedTiming& when, const Pace& pace, Time length);

}  // namespace baitwright
