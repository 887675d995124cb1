#pragma once

#include <optional>
#include <vector>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// What a session's preparation is worked out from.
struct PrepNeeds {
    const std::vector<PlannedBatch>& batches;
    const std::vector<PlannedSoak>& soaks;
    const std::vector<PlannedFeed>& put_ins;
    int people = 1;
    std::optional<int> start;  ///< minutes since midnight
    int hands = 1;             ///< pairs of them
    Time travel;               ///< 0 where the work is done at the water
    enum class Evening { used, not_used } evening = Evening::used;
};

/// The jobs back from the start: load; before it shape the first balls, let down what is to be wetter, stir in what
/// goes in last (`last_in_tub.h`), wet to the feel, riddle, wet for the first time, in that order back; soaks end and
/// have stood before the first wetting of what takes them, or before loading; what is dry is weighed and what is pumped
/// is pumped the evening before, where it is used, and frozen mix is taken out to thaw then in any case; live and
/// cooked feed is weighed on the day. Each job, by one pair of hands, as late as it can be; jobs that clash move
/// earlier, and then a mix rests and pellets stand longer, which does no harm. With a way to the water all is loaded
/// before it, what stands may do so on it, and at the water it is only brought to hand and felt again. What can share a
/// moment is one job (`shared_moments.h`). By time.
/// **Source**: common practice, no source. **Test**: `tests/answers/prep_timetable_test.cpp`, `plan_session_test.cpp`.
std::vector<PrepJob> prep_timetable(const PrepNeeds& needs);

}  // namespace baitwright
