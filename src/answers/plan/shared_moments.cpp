#include "answers/plan/shared_moments.h"

#include <algorithm>
#include <map>

#include "answers/plan/prep_minutes.h"
#include "bait/kitchen_rounding.h"
#include "quantities/hair.h"
#include "quantities/listed.h"

namespace baitwright {

namespace {

constexpr double longer_at_most = 0.25;  // of a soak

bool is_single_weighing(const PrepJob& job) {
    return job.task == PrepTask::weigh && (job.count == 1 || job.portions.size() > 1);
}

bool share_a_moment(const PrepJob& earlier, const PrepJob& later) {
    if (!is_single_weighing(earlier) || !is_single_weighing(later) || earlier.when != later.when) return false;
    return later.when == PrepJob::When::evening_before || later.at - (earlier.at + earlier.hands_on) < 1.0 * second;
}

/// Whether they can be poured on, one after the other, and drained in the same order.
bool can_be_soaked_together(const std::vector<const PlannedSoak*>& group, const PlannedSoak& one_more) {
    Time soak = one_more.soak;
    for (const PlannedSoak* other : group) soak = std::min(soak, other->soak);
    const auto pellets = static_cast<double>(group.size() + 1);
    return pellets * pour_on_pellets <= soak + hair &&
           (pellets - 1) * (drain_pellets - pour_on_pellets) <= longer_at_most * soak + hair;
}

}  // namespace

PrepJob job_for(PrepTask task, const std::string& subject, Time hands_on, Mass amount) {
    PrepJob job;
    job.task = task;
    job.subject = subject;
    job.hands_on = hands_on;
    job.amount = amount;
    if (!subject.empty()) job.portions = {{subject, amount}};
    return job;
}

PrepJob merged(const std::vector<PrepJob>& jobs) {
    PrepJob whole = jobs.front();
    for (std::size_t i = 1; i < jobs.size(); ++i) {
        const PrepJob& job = jobs[i];
        whole.amount += job.amount;
        whole.hands_on += job.hands_on;
        whole.count += job.count;
        whole.waiting = std::max(whole.waiting, job.waiting);
        whole.portions.insert(whole.portions.end(), job.portions.begin(), job.portions.end());
    }
    std::vector<std::string> names;
    names.reserve(whole.portions.size());
    for (const PrepPortion& portion : whole.portions) names.push_back(portion.of);
    whole.subject = listed(names);
    return whole;
}

std::vector<std::vector<const PlannedSoak*>> soaked_together(const std::vector<PlannedSoak>& soaks) {
    std::vector<std::vector<const PlannedSoak*>> groups;
    groups.reserve(soaks.size());
    for (const PlannedSoak& soak : soaks) {
        const auto joins = [&](const std::vector<const PlannedSoak*>& group) {
            return kitchen_soak_time(group.front()->soak) == kitchen_soak_time(soak.soak) &&
                   can_be_soaked_together(group, soak);
        };
        const auto group = std::find_if(groups.begin(), groups.end(), joins);
        if (group == groups.end())
            groups.push_back({&soak});
        else
            group->push_back(&soak);
    }
    return groups;
}

std::vector<PrepJob> weighed_together(const std::vector<PrepJob>& jobs) {
    std::vector<PrepJob> shared;
    shared.reserve(jobs.size());
    std::map<int, std::size_t> last_of_pair;
    for (const PrepJob& job : jobs) {
        const auto last = last_of_pair.find(job.pair);
        if (last != last_of_pair.end() && share_a_moment(shared[last->second], job)) {
            shared[last->second] = merged({shared[last->second], job});
            continue;
        }
        last_of_pair[job.pair] = shared.size();
        shared.push_back(job);
    }
    return shared;
}

}  // namespace baitwright
