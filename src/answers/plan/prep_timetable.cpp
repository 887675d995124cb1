#include "answers/plan/prep_timetable.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <set>

#include "answers/pellets/soak_timetable.h"
#include "answers/plan/pair_of_hands.h"
#include "answers/plan/prep_minutes.h"

namespace baitwright {

namespace {

PrepJob job_of(PrepTask task, const std::string& subject, Time hands_on, Mass amount = {}, Time waiting = {}) {
    PrepJob job;
    job.task = task;
    job.subject = subject;
    job.hands_on = hands_on;
    job.amount = amount;
    job.waiting = waiting;
    return job;
}

Time evening_of(const std::optional<int>& start) {
    if (!start) return Time{} - evening_without_clock;
    return evening_clock - 24.0 * hour - *start * minute;
}

class Timetable {
public:
    explicit Timetable(const PrepNeeds& needs) : needs_(needs) {}

    std::vector<PrepJob> work_out() {
        const Time loaded = hands_.do_by({job_of(PrepTask::load, "", load_the_barrow)}, {});
        for (const std::size_t i : slowest_first()) {
            const PlannedBatch& batch = needs_.batches[i];
            if (batch.feel.empty()) continue;
            const Time wetted = wet(batch, loaded);
            weigh_parts(batch, wetted);
            wetted_.emplace(batch.name, wetted);
            const auto earliest = wetted_.find(batch.name);
            earliest->second = std::min(earliest->second, wetted);
        }
        for (const PlannedBatch& batch : needs_.batches)
            if (batch.feel.empty()) measure_out(batch, loaded);
        for (const PlannedSoak& soak : needs_.soaks)
            soak.strokes > 0 || soak.for_the_hook ? pump(soak, loaded) : soak_by(soak, loaded);
        return hands_.in_order();
    }

private:
    /// The batch with the longest rest is wetted first, so it is the last to find its place from the start back.
    [[nodiscard]] std::vector<std::size_t> slowest_first() const {
        std::vector<std::size_t> order(needs_.batches.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return needs_.batches[a].rest < needs_.batches[b].rest; });
        return order;
    }

    [[nodiscard]] Time evening(Time by) const {
        return needs_.evening == PrepNeeds::Evening::used ? std::min(by, evening_of(needs_.start)) : by;
    }

    /// Back from the moment it is loaded to the first pour, whose beginning is returned.
    Time wet(const PlannedBatch& batch, Time loaded) {
        const double buckets = batch.containers;
        Time by = loaded;
        if (const int balls = first_balls(batch)) {
            PrepJob shape = job_of(PrepTask::shape, batch.name, balls * shape_a_ball);
            shape.count = balls;
            by = hands_.do_by({shape}, by);
        }
        by = hands_.do_by(
            {job_of(PrepTask::second_wetting, batch.name, buckets * finish_a_bucket, batch.water_rest, settle)}, by);
        by = hands_.do_by(
            {job_of(PrepTask::riddle, batch.name, buckets * riddle_a_bucket, batch.dry + batch.water_first)}, by);
        return hands_.do_by(
            {job_of(PrepTask::first_wetting, batch.name, buckets * wet_a_bucket, batch.water_first, batch.rest)}, by);
    }

    void weigh_parts(const PlannedBatch& batch, Time by) {
        const auto parts = static_cast<double>(batch.parts.size());
        PrepJob weigh = job_of(PrepTask::weigh, batch.name, parts * weigh_a_part + stir_dry, batch.dry);
        weigh.count = static_cast<int>(batch.parts.size());
        hands_.do_by({weigh}, evening(by));
    }

    /// What goes in as it is and is not soaked is weighed on its own.
    void measure_out(const PlannedBatch& batch, Time loaded) {
        for (const PlannedTotal& part : batch.parts) {
            const Mass dry = part.mass - part.soaked;
            if (dry < 0.001 * part.mass || !measured_.insert(part.name).second) continue;
            weigh_alone(part.name, all_dry(part.name), loaded);
        }
    }

    /// Of all that goes in as it is.
    [[nodiscard]] Mass all_dry(const std::string& name) const {
        Mass sum;
        for (const PlannedBatch& batch : needs_.batches)
            for (const PlannedTotal& part : batch.parts)
                if (batch.feel.empty() && part.name == name) sum += part.mass - part.soaked;
        return sum;
    }

    /// Those that go in at once; later ones are made on the bank, one at a time.
    [[nodiscard]] int first_balls(const PlannedBatch& batch) const {
        int balls = 0;
        for (const PlannedFeed& put_in : needs_.put_ins)
            if (put_in.form == FeedForm::ball && put_in.at < 1.0 * minute &&
                std::find(batch.feeds.begin(), batch.feeds.end(), put_in.feed) != batch.feeds.end())
                balls += put_in.count;
        return balls * needs_.people;
    }

    void pump(const PlannedSoak& soak, Time loaded) {
        hands_.do_by({job_of(PrepTask::pump, soak.name, soak.lots * pumping_time, soak.pour)}, evening(loaded));
    }

    /// Ready before the first of what takes it is wetted.
    void soak_by(const PlannedSoak& soak, Time loaded) {
        Time by = loaded;
        for (const PlannedBatch& batch : needs_.batches) {
            const auto wetted = wetted_.find(batch.name);
            if (wetted != wetted_.end() && takes(batch, soak)) by = std::min(by, wetted->second);
        }
        PrepJob drain = job_of(PrepTask::drain, soak.name, drain_pellets, {}, soak.stand);
        drain.at = soak.soak;
        const Time poured = hands_.do_by(
            {job_of(PrepTask::pour_on, soak.name, std::min(pour_on_pellets, soak.soak), soak.pour, soak.soak), drain},
            by);
        weigh_alone(soak.name, soak.dry, poured);
    }

    void weigh_alone(const std::string& name, Mass mass, Time by) {
        PrepJob weigh = job_of(PrepTask::weigh, name, weigh_a_part, mass);
        weigh.count = 1;
        hands_.do_by({weigh}, evening(by));
    }

    static bool takes(const PlannedBatch& batch, const PlannedSoak& soak) {
        return std::any_of(batch.parts.begin(), batch.parts.end(),
                           [&](const PlannedTotal& part) { return part.name == soak.name && part.soaked > Mass{}; });
    }

    const PrepNeeds& needs_;
    PairOfHands hands_;
    std::map<std::string, Time> wetted_;  // when each is wetted first
    std::set<std::string> measured_;      // what goes in as it is, by name
};

bool is_evening(const PrepJob& job, const PrepNeeds& needs) {
    return needs.evening == PrepNeeds::Evening::used && job.at < evening_of(needs.start) - 1e-6 * second;
}

}  // namespace

std::vector<PrepJob> prep_timetable(const PrepNeeds& needs) {
    std::vector<PrepJob> jobs = Timetable(needs).work_out();
    for (PrepJob& job : jobs)
        if ((job.task == PrepTask::weigh || job.task == PrepTask::pump) && is_evening(job, needs))
            job.when = PrepJob::When::evening_before;
    return jobs;
}

}  // namespace baitwright
