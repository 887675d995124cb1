#include "answers/strategy/put_in_times.h"

#include <algorithm>

#include "quantities/fault.h"
#include "quantities/hair.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

/// The gap between put-ins, and whether the first waits for one.
struct Gap {
    Time gap;
    bool waits;
};

struct GapOf {
    const Pace& pace;

    Gap operator()(AtOnce) const { return {}; }
    Gap operator()(EveryTime every) const { return {every.gap, false}; }
    Gap operator()(EveryPutIn) const {
        return {1.0 * hour / rate(pace.put_ins_per_hour, "put_ins_per_hour = 12"), false};
    }
    Gap operator()(EveryFish every) const {
        return {every.fish * hour / rate(pace.fish_per_hour, "fish_per_hour = 10"), true};
    }

    Gap operator()(WhenSlow) const { return {}; }

    static double rate(const std::optional<double>& per_hour, const char* example) {
        if (per_hour && *per_hour > 0) return *per_hour;
        throw InputError("no-pace", "the feed goes by the pace of the session, which the strategy does not state",
                         std::string("add a block [pace] with ") + example);
    }
};

}  // namespace

Time gap_of(const FeedTiming& when, const Pace& pace) {
    return std::visit(GapOf{pace}, when.rhythm).gap;
}

std::vector<Time> put_in_times(const FeedTiming& when, const Pace& pace, Time length) {
    if (const AtOnce* once = std::get_if<AtOnce>(&when.rhythm))
        return once->at < length - hair ? std::vector<Time>{once->at} : std::vector<Time>{};
    if (std::holds_alternative<WhenSlow>(when.rhythm)) return {};
    const Gap each = std::visit(GapOf{pace}, when.rhythm);
    const Time stop = when.until ? std::min(*when.until, length) : length;
    if (!(each.gap > Time{}) || (stop - when.from) / each.gap > most_put_ins)
        throw InputError("too-many-put-ins", "the feed would go in more than 20,000 times",
                         "make the gap longer: every 10 s is 8,640 times in 24 h");
    std::vector<Time> times;
    for (double n = each.waits ? 1 : 0; when.from + n * each.gap < stop - hair; ++n)
        times.push_back(when.from + n * each.gap);
    return times;
}

}  // namespace baitwright
