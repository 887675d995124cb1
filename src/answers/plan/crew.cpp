#include "answers/plan/crew.h"

#include <algorithm>
#include <cmath>

#include "quantities/hair.h"
#include "quantities/sort_stably.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

Time whole_minutes_before(Time moment) {
    return std::floor(moment.in(minute) + 1e-9) * minute;
}

Time span_of(const LinkedJobs& jobs) {
    Time span;
    for (const PrepJob& job : jobs) span = std::max(span, job.at + job.hands_on + job.waiting);
    return span;
}

/// The job in hand that the span runs into, or null.
const PrepJob* in_the_way(const std::vector<PrepJob>& done, Time begin, Time end) {
    for (const PrepJob& job : done)
        if (begin < job.at + job.hands_on - hair && end > job.at + hair) return &job;
    return nullptr;
}

}  // namespace

Time Crew::free_for(PrepJob& job, Time begin) const {
    Time latest;
    for (std::size_t pair = 0; pair < done_.size(); ++pair) {
        const PrepJob* other = in_the_way(done_[pair], begin, begin + job.hands_on);
        if (!other) {
            job.pair = static_cast<int>(pair) + 1;
            return begin;
        }
        const Time before = other->at - job.hands_on;
        latest = pair == 0 ? before : std::max(latest, before);
    }
    return latest;
}

Time Crew::do_by(LinkedJobs jobs, Time by) {
    Time begin = whole_minutes_before(by - span_of(jobs));
    for (bool free = false; !free;) {
        free = true;
        for (PrepJob& job : jobs) {
            const Time wanted = begin + job.at, found = free_for(job, wanted);
            if (found >= wanted) continue;
            begin = whole_minutes_before(found - job.at);
            free = false;
        }
    }
    for (PrepJob& job : jobs) {
        job.at += begin;
        done_[static_cast<std::size_t>(job.pair) - 1].push_back(std::move(job));
    }
    return begin;
}

std::vector<PrepJob> Crew::in_order() const {
    std::vector<PrepJob> jobs;
    for (const std::vector<PrepJob>& of_pair : done_) jobs.insert(jobs.end(), of_pair.begin(), of_pair.end());
    sort_stably(jobs.begin(), jobs.end(), [](const PrepJob& a, const PrepJob& b) { return a.at < b.at; });
    return jobs;
}

}  // namespace baitwright
