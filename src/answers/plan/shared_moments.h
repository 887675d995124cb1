#pragma once

#include <vector>

#include "answers/plan/plan_answer.h"

/// Jobs that share a moment are one job: its hands are those of its parts, and it is one line to read.
/// **Source**: common practice, no source. **Test**: `tests/answers/prep_timetable_test.cpp`.
namespace baitwright {

/// A job for one thing. `count` and `waiting` are the caller's to fill.
PrepJob job_for(PrepTask task, const std::string& subject, Time hands_on, Mass amount = {});

/// One job of those: what they take together, and the longest of their waits. Not empty.
PrepJob merged(const std::vector<PrepJob>& jobs);

/// Pellets that go into water together: their soaks are the same as a person would say them, all are poured on before
/// the first is drained, and none lies more than a quarter of its soak longer for it.
std::vector<std::vector<const PlannedSoak*>> soaked_together(const std::vector<PlannedSoak>& soaks);

/// Weighs in one job the single things that one pair of hands weighs one right after the other, or all in one
/// evening. `jobs` by time.
std::vector<PrepJob> weighed_together(const std::vector<PrepJob>& jobs);

}  // namespace baitwright
