#include "bait/feed_feels.h"

#include <algorithm>

#include "quantities/suggestion.h"

namespace baitwright {

std::vector<std::string> stated_feels(const Feed& feed) {
    std::vector<std::string> feels;
    const auto add = [&](const std::string& feel) {
        const auto same = [&](const std::string& known) { return folded_name(known) == folded_name(feel); };
        if (!feel.empty() && std::none_of(feels.begin(), feels.end(), same)) feels.push_back(feel);
    };
    add(feed.feel);
    for (const FeedPart& part : feed.parts) add(part.feel);
    return feels;
}

std::vector<Feed> feeds_by_feel(const Feed& feed) {
    std::vector<Feed> feeds;
    feeds.reserve(feed.parts.size());
    for (const FeedPart& part : feed.parts) {
        const std::string& feel = part.feel.empty() ? feed.feel : part.feel;
        auto same = std::find_if(feeds.begin(), feeds.end(),
                                 [&](const Feed& known) { return folded_name(known.feel) == folded_name(feel); });
        if (same == feeds.end()) {
            same = feeds.insert(feeds.end(), feed);
            same->feel = feel;
            same->parts.clear();
        }
        same->parts.push_back(part);
    }
    return feeds;
}

}  // namespace baitwright
