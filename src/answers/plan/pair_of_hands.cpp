#include "answers/plan/pair_of_hands.h"

#include <algorithm>
#include <cmath>

#include "quantities/hair.h"
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

}  // namespace

const PrepJob* PairOfHands::in_the_way(Time begin, Time end) const {
    for (const PrepJob& job : done_)
        if (begin < job.at + job.hands_on - hair && end > job.at + hair) return &job;
    return nullptr;
}

Time PairOfHands::do_by(LinkedJobs jobs, Time by) {
    Time begin = whole_minutes_before(by - span_of(jobs));
    for (bool free = false; !free;) {
        free = true;
        for (const PrepJob& job : jobs) {
            const PrepJob* other = in_the_way(begin + job.at, begin + job.at + job.hands_on);
            if (!other) continue;
            begin = whole_minutes_before(other->at - job.hands_on - job.at);
            free = false;
        }
    }
    for (PrepJob& job : jobs) {
        job.at += begin;
        done_.push_back(std::move(job));
    }
    return begin;
}

std::vector<PrepJob> PairOfHands::in_order() const {
    std::vector<PrepJob> jobs = done_;
    std::stable_sort(jobs.begin(), jobs.end(), [](const PrepJob& a, const PrepJob& b) { return a.at < b.at; });
    return jobs;
}

}  // namespace baitwright
