#include "answers/strategy/odd_strategy.h"

#include <algorithm>

#include "bait/strategy_names.h"

namespace baitwright {

std::vector<Warning> oddities_of(const Strategy& strategy, const UnrolledStrategy& unrolled) {
    std::vector<Warning> odd = unrolled.warnings;
    if (strategy.hookbaits.empty()) odd.push_back({"no-hookbait", "no hookbait is given, so none is counted"});
    for (std::size_t i = 0; i < strategy.feeds.size(); ++i) {
        const bool fed = std::any_of(unrolled.feeds.begin(), unrolled.feeds.end(),
                                     [&](const FeedNeed& need) { return need.written == i; });
        if (!fed)
            odd.push_back({"never-fed", feed_subject(i + 1) + ", " + name_of(strategy.feeds[i]) +
                                            ", never goes in: the session is over before its first time"});
    }
    return odd;
}

}  // namespace baitwright
