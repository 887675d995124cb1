#pragma once

#include <string>
#include <vector>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// Put-ins of one kind that what is left makes, evenly apart.
struct RestPutIns {
    FeedForm form = FeedForm::cup;
    std::size_t feed = 0;  ///< its place in `SessionPlan::feeds`
    int count = 1;         ///< at each put-in
    FeedSize size;         ///< of one, never more than the strategy's
    Volume each_volume;    ///< the same as it goes in
    Mass each_mass;
    int put_ins = 0;
    Time first;            ///< from now
    Time gap;              ///< between them, as it is told: rounded down; of a single one as `first`
    bool planned = false;  ///< at the plan's own moments, at least the first

    Mass mass() const { return put_ins * count * each_mass; }
};

/// How often it goes in by the strategy; half an hour where that puts it in but once (common practice, no source).
Time rhythm_of(const std::string& name, const SessionPlan& plan);

/// What so much of a feed makes of the put-ins that the plan still has, those of each kind by their share, in order of
/// time. Balls and feeders go in whole, fewer where it does not last; cups, pots and what is loose down to half of what
/// is planned, then fewer. No put-in is larger, and none comes sooner after another, than by the strategy.
/// Where the plan has none left, single portions as evenly as its rhythm allows, the last before the end.
/// **Source**: common practice, no source. **Test**: `tests/answers/rest_of_session_test.cpp`.
std::vector<RestPutIns> rest_put_ins(const std::string& name, Mass mass, const SessionPlan& plan, Time now);

}  // namespace baitwright
