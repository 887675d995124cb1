#include "answers/pellets/soak_timetable.h"

#include <algorithm>
#include <cmath>

#include "quantities/sort_stably.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Time apart = 1.0 * minute;

/// A batch as the hands see it: poured on so long before it is ready and drained so long before, if at all.
struct Batch {
    std::string name;
    SoakTask::Kind first;
    Time poured, drained;
    Mass pour;
};

bool clashes(const std::vector<SoakTask>& tasks, Time moment) {
    return std::any_of(tasks.begin(), tasks.end(), [&](const SoakTask& task) {
        return std::abs((task.before_ready - moment).si()) < apart.si() - 1e-9;
    });
}

}  // namespace

std::vector<SoakTask> soak_timetable(const std::vector<SoakedAnswer>& soaked, const std::vector<PumpedAnswer>& pumped,
                                     SoakMethod method) {
    std::vector<Batch> batches;
    for (const SoakedAnswer& one_batch : soaked) {
        const Time stand = one_batch.stand_ready.middle;
        batches.push_back({one_batch.name, SoakTask::Kind::pour_on, one_batch.soak.middle + stand,
                           method == SoakMethod::covered ? stand : Time{}, one_batch.pour});
    }
    for (const PumpedAnswer& one_batch : pumped)
        batches.push_back(
            {one_batch.name, SoakTask::Kind::pump, one_batch.lots * pumping_time, Time{}, one_batch.pour});
    sort_stably(batches.begin(), batches.end(), [](const Batch& a, const Batch& b) { return a.poured > b.poured; });
    std::vector<SoakTask> tasks;
    for (const Batch& batch : batches) {
        const bool drains = batch.first == SoakTask::Kind::pour_on && method == SoakMethod::covered;
        Time earlier;
        while (clashes(tasks, batch.poured + earlier) || (drains && clashes(tasks, batch.drained + earlier)))
            earlier += 0.5 * minute;
        tasks.push_back({batch.poured + earlier, batch.first, batch.name, batch.pour});
        if (drains) tasks.push_back({batch.drained + earlier, SoakTask::Kind::drain, batch.name, {}});
    }
    sort_stably(tasks.begin(), tasks.end(),
                [](const SoakTask& a, const SoakTask& b) { return a.before_ready > b.before_ready; });
    return tasks;
}

}  // namespace baitwright
