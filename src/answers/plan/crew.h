#pragma once

#include <cstddef>
#include <vector>

#include "answers/plan/plan_answer.h"

namespace baitwright {

/// Jobs at fixed distances from each other, such as pouring on and draining: `at` counts from the first. They are moved
/// together or not at all; any pair of hands may do each.
using LinkedJobs = std::vector<PrepJob>;

/// So many pairs of hands: each job is done by one pair, and no two jobs of a pair overlap. What does not fit where it
/// is wanted is done earlier.
class Crew {
public:
    /// `pairs` from 1.
    explicit Crew(int pairs) : done_(static_cast<std::size_t>(pairs)) {}

    /// Does the jobs so that the last is done, and has waited, by then: as late as a pair is free for each of them, at
    /// whole minutes. Returns when the first begins.
    Time do_by(LinkedJobs jobs, Time by);

    /// All that is done, by time.
    [[nodiscard]] std::vector<PrepJob> in_order() const;

private:
    /// Gives the job, begun then, to a pair that is free for it and returns that moment, or the latest earlier one at
    /// which one may be.
    [[nodiscard]] Time free_for(PrepJob& job, Time begin) const;

    std::vector<std::vector<PrepJob>> done_;  // by each pair
};

}  // namespace baitwright
