#include "bait/feed_order.h"

#include <algorithm>

#include "bait/strategy_names.h"
#include "quantities/hair.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

bool is_a_place(const Strategy& strategy, const std::string& folded) {
    for (std::size_t place = 0; place < strategy.feeds.size(); ++place)
        if (folded == feed_subject(place + 1)) return true;
    return false;
}

/// "feed 2" is a place, whatever has such a name; else what it is called or holds.
bool is_called(const Strategy& strategy, std::size_t place, const std::string& folded) {
    const Feed& feed = strategy.feeds[place];
    if (is_a_place(strategy, folded)) return folded == feed_subject(place + 1);
    if (folded == folded_name(name_of(feed))) return true;
    return std::any_of(feed.parts.begin(), feed.parts.end(),
                       [&](const FeedPart& part) { return folded_name(part.of) == folded; });
}

/// Whether one comes to itself by what it waits for; `seen` marks the feeds that were looked at.
bool comes_to(const Strategy& strategy, std::size_t from, std::size_t to, std::vector<bool>& seen) {
    if (seen[from]) return false;
    seen[from] = true;
    for (const std::size_t before : feeds_before(strategy, from))
        if (before == to || comes_to(strategy, before, to, seen)) return true;
    return false;
}

Fault unknown_feed(const Strategy& strategy, std::size_t feed) {
    std::vector<std::string> names;
    names.reserve(strategy.feeds.size());
    for (std::size_t i = 0; i < strategy.feeds.size(); ++i)
        if (i != feed) names.push_back(name_of(strategy.feeds[i]));
    const std::string& after = strategy.feeds[feed].when.after;
    const std::string near = near_names_hint(after, names);
    return {
        "unknown-feed", "no other feed of the strategy is '" + after + "'",
        near.empty() ? R"(name what another feed holds, as in after = "silt bed", or its place, as in "feed 1")" : near,
        feed_after_subject(feed + 1)};
}

bool goes_on_to_the_end(const FeedTiming& when, Time length) {
    if (std::holds_alternative<AtOnce>(when.rhythm)) return false;
    return !when.until || *when.until > length - hair;
}

void add_never_used_up(const Strategy& strategy, std::size_t feed, std::size_t before, std::vector<Fault>& faults) {
    const FeedTiming& when = strategy.feeds[before].when;
    const std::string called = feed_subject(before + 1) + ", " + name_of(strategy.feeds[before]) + ",";
    if (std::holds_alternative<WhenSlow>(when.rhythm))
        faults.push_back({"never-used-up", called + " goes in as bites slow, so nobody knows when it is used up",
                          "wait for a feed that goes by the clock", feed_after_subject(feed + 1)});
    else if (goes_on_to_the_end(when, strategy.length))
        faults.push_back({"never-used-up", called + " is fed to the end of the session, so nothing comes after it",
                          "say when that one stops, as in until = \"90 min\"", feed_after_subject(feed + 1)});
}

void add_circle(const Strategy& strategy, std::vector<Fault>& faults) {
    for (std::size_t i = 0; i < strategy.feeds.size(); ++i) {
        std::vector<bool> seen(strategy.feeds.size(), false);
        if (!comes_to(strategy, i, i, seen)) continue;
        faults.push_back({"circle", feed_subject(i + 1) + " waits for a feed that waits for it",
                          "let one of them go in at a time of its own, with at or from", feed_after_subject(i + 1)});
        return;
    }
}

}  // namespace

std::vector<std::size_t> feeds_before(const Strategy& strategy, std::size_t feed) {
    std::vector<std::size_t> before;
    const std::string folded = folded_name(strategy.feeds[feed].when.after);
    if (folded.empty()) return before;
    before.reserve(strategy.feeds.size());
    for (std::size_t i = 0; i < strategy.feeds.size(); ++i)
        if (i != feed && is_called(strategy, i, folded)) before.push_back(i);
    return before;
}

std::vector<Fault> feed_order_faults(const Strategy& strategy) {
    std::vector<Fault> faults;
    for (std::size_t i = 0; i < strategy.feeds.size(); ++i) {
        if (strategy.feeds[i].when.after.empty()) continue;
        const std::vector<std::size_t> before = feeds_before(strategy, i);
        if (before.empty()) faults.push_back(unknown_feed(strategy, i));
        for (const std::size_t awaited : before) add_never_used_up(strategy, i, awaited, faults);
    }
    if (faults.empty()) add_circle(strategy, faults);
    return faults;
}

}  // namespace baitwright
