#include "answers/plan/slow_feeds.h"

namespace baitwright {

std::vector<PlannedSlowFeed> planned_slow_feeds(const UnrolledStrategy& session) {
    std::vector<PlannedSlowFeed> slow;
    slow.reserve(session.feeds.size());
    for (std::size_t i = 0; i < session.feeds.size(); ++i) {
        const FeedNeed& need = session.feeds[i];
        if (!(need.slow_times > 0)) continue;
        PlannedFeed each;
        each.at = need.slow_from;
        each.name = need.name;
        each.feed = i;
        each.form = need.form;
        each.count = need.count;
        each.size = need.size;
        each.each_volume = need.wet_volume / need.portions;
        each.each_mass = need.wet_mass / need.portions;
        each.volume = need.count * each.each_volume;
        each.mass = need.count * each.each_mass;
        slow.push_back({std::move(each), need.slow_times, need.slow_until});
    }
    return slow;
}

std::vector<PlannedFeed> ready_at_start(const SessionPlan& plan) {
    std::vector<PlannedFeed> ready = plan.put_ins;
    ready.reserve(ready.size() + plan.slow.size());
    for (const PlannedSlowFeed& slow : plan.slow) {
        ready.push_back(slow.each);
        ready.back().at = Time{};
    }
    return ready;
}

}  // namespace baitwright
