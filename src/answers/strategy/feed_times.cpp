#include "answers/strategy/feed_times.h"

#include <algorithm>

#include "answers/strategy/put_in_times.h"
#include "bait/feed_order.h"
#include "bait/strategy_names.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

/// When one begins that waits for the other: never, which is at the end, where the other never goes in.
Time begin_after(const Strategy& strategy, std::size_t other, const FeedTiming& waiting, Time length) {
    const FeedTiming& when = strategy.feeds[other].when;
    const std::vector<Time> moments = feed_times(strategy, other, length).moments;
    if (moments.empty()) return length;
    if (!std::holds_alternative<AtOnce>(when.rhythm)) return moments.back() + gap_of(when, strategy.pace);
    const bool waits_anyway = std::holds_alternative<EveryFish>(waiting.rhythm);
    return waits_anyway ? moments.back() : moments.back() + gap_of(waiting, strategy.pace);
}

[[noreturn]] void rethrow_of(const InputError& error, std::size_t feed) {
    std::vector<Fault> faults = error.faults();
    for (Fault& fault : faults)
        if (fault.subject.empty()) fault.subject = feed_subject(feed + 1);
    throw InputError(std::move(faults));
}

}  // namespace

FeedTimes feed_times(const Strategy& strategy, std::size_t feed, Time length) {
    FeedTiming when = strategy.feeds[feed].when;
    if (const auto* slow = std::get_if<WhenSlow>(&when.rhythm)) return {{}, when.from < length ? slow->times : 0};
    try {
        for (const std::size_t before : feeds_before(strategy, feed))
            when.from = std::max(when.from, begin_after(strategy, before, when, length));
        return {put_in_times(when, strategy.pace, length)};
    } catch (const InputError& error) {
        rethrow_of(error, feed);
    }
}

}  // namespace baitwright
