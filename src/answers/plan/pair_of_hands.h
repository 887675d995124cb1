#pragma once

#include <vector>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// Jobs at fixed distances from each other, such as pouring on and draining: `at` counts from the first. They are moved
/// together or not at all.
using LinkedJobs = std::vector<PrepJob>;

/// One pair of hands: no two jobs of it overlap. What does not fit where it is wanted is done earlier.
class PairOfHands {
public:
    /// Does the jobs so that the last is done, and has waited, by then: as late as the hands are free for each of them,
    /// at whole minutes. Returns when the first begins.
    Time do_by(LinkedJobs jobs, Time by);

    /// All that is done, by time.
    [[nodiscard]] std::vector<PrepJob> in_order() const;

private:
    /// The job in hand that the span runs into, or null.
    [[nodiscard]] const PrepJob* in_the_way(Time begin, Time end) const;

    std::vector<PrepJob> done_;
};

}  // namespace baitwright
