#pragma once

#include <vector>

#include "bait/strategy.h"

namespace baitwright {

/// In one session, all feeds together: every 10 s is 8,640 times in 24 h, and nobody feeds faster.
constexpr double most_put_ins = 20000;

/// Between two put-ins: of a put-in 1/pace; n fish take n/pace. None for what goes in once or as bites slow. Throws
/// InputError "no-pace".
Time gap_of(const FeedTiming& when, const Pace& pace);

/// The moments at which a feed goes in, rising: at once; or from, from + gap, ... strictly before `until` and before
/// the end of the session. The first of a feed by n fish is after the first n. What is fed as bites slow has none; what
/// `after` says is not looked at (`feed_times.h`). Throws
/// InputError "no-pace", or "too-many-put-ins" above `most_put_ins`.
std::vector<Time> put_in_times(const FeedTiming& when, const Pace& pace, Time length);

}  // namespace baitwright
