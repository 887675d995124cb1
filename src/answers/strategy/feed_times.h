#pragma once

#include <vector>

#include "bait/strategy.h"

namespace baitwright {

/// When one feed goes in, in one session: at moments, or as bites slow.
struct FeedTimes {
    std::vector<Time> moments;  ///< rising; none for what is fed as bites slow
    double slow = 0;            ///< how often that is reckoned to be; 0 for what goes by the clock

    [[nodiscard]] double count() const { return slow > 0 ? slow : static_cast<double>(moments.size()); }
};

/// The times of the feed at that place, from 0. One that waits for another begins one gap after the last put-in of
/// that: of its own gaps where the other goes in once, else of the other's, in the turn that would have been its next.
/// None where the session is over before. What `feed_order_faults` finds must have been refused before. Throws
/// InputError as `put_in_times` does, with the subject "feed N".
FeedTimes feed_times(const Strategy& strategy, std::size_t feed, Time length);

}  // namespace baitwright
