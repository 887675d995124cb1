#include "answers/plan/prep_timetable.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <set>

#include "answers/pellets/soak_timetable.h"
#include "answers/plan/crew.h"
#include "answers/plan/last_in_tub.h"
#include "answers/plan/prep_minutes.h"
#include "answers/plan/shared_moments.h"
#include "quantities/hair.h"
#include "quantities/sort_stably.h"

namespace baitwright {

namespace {

constexpr Mass least_poured = 0.5 * gram;  // less is what rounding leaves where kept mix brings all the water

Time evening_of(const std::optional<int>& start) {
    if (!start) return Time{} - evening_without_clock;
    return evening_clock - 24.0 * hour - *start * minute;
}

class Timetable {
public:
    explicit Timetable(const PrepNeeds& needs) : needs_(needs), crew_(needs.hands) {}

    std::vector<PrepJob> work_out() {
        get_there();
        for (const std::size_t i : slowest_first()) {
            const PlannedBatch& batch = needs_.batches[i];
            if (batch.feel.empty()) continue;
            const Time wetted = wet(batch);
            weigh_parts(batch, wetted);
            wetted_.emplace(batch.name, wetted);
            const auto earliest = wetted_.find(batch.name);
            earliest->second = std::min(earliest->second, wetted);
        }
        for (const PlannedBatch& batch : needs_.batches) {
            if (!batch.feel.empty()) continue;
            measure_out(batch);
            if (first_balls(batch) > 0) wetted_.emplace(batch.name, shape_first(batch));
        }
        soak_and_pump();
        thaw();
        return crew_.in_order();
    }

private:
    /// Back from the start: all is to hand, after the way there, which begins when all is loaded.
    void get_there() {
        if (!(needs_.travel > Time{})) {
            loaded_ = arrived_ = crew_.do_by({job_for(PrepTask::load, "", load_the_barrow)}, {});
            return;
        }
        arrived_ = crew_.do_by({job_for(PrepTask::bring_to_hand, "", feel_it_again)}, {});
        PrepJob travel = job_for(PrepTask::travel, "", {});
        travel.waiting = needs_.travel;
        loaded_ = crew_.do_by({job_for(PrepTask::load, "", load_the_barrow)}, crew_.do_by({travel}, arrived_));
    }

    /// When it must be ready that still has to stand so long: it may do so on the way, but not be worked on.
    [[nodiscard]] Time ready_by(Time stand) const { return std::min(arrived_, loaded_ + stand); }

    /// The batch with the longest rest is wetted first, so it is the last to find its place from the start back.
    [[nodiscard]] std::vector<std::size_t> slowest_first() const {
        std::vector<std::size_t> order(needs_.batches.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        sort_stably(order.begin(), order.end(),
                    [&](std::size_t a, std::size_t b) { return needs_.batches[a].rest < needs_.batches[b].rest; });
        return order;
    }

    [[nodiscard]] Time evening(Time by) const {
        return needs_.evening == PrepNeeds::Evening::used ? std::min(by, evening_of(needs_.start)) : by;
    }

    /// Back from the moment it is loaded to the first pour, whose beginning is returned.
    Time wet(const PlannedBatch& batch) {
        const double share = batch.kept_dry > Mass{} ? 1 - batch.kept_dry / batch.dry : 1.0;
        const double buckets = std::ceil(share * batch.buckets - 1e-9);
        Time by = first_balls(batch) > 0 ? shape_first(batch) : ready_by(settle);
        by = let_down_all(batch, by);
        const std::vector<LastPart> last = last_in_tub(batch);
        if (!last.empty()) by = stir_in(batch, last, share, by);
        if (batch.kept.empty() || batch.water_rest > least_poured) {
            PrepJob finish =
                job_for(PrepTask::second_wetting, batch.name, buckets * finish_a_bucket, share * batch.water_rest);
            if (last.empty()) finish.waiting = settle;
            by = crew_.do_by({finish}, by);
        }
        by = crew_.do_by({job_for(PrepTask::riddle, batch.name, buckets * riddle_a_bucket, share * to_riddle(batch))},
                         by);
        if (!batch.kept.empty() && !(batch.dry > Mass{})) return by;  // all of it was wetted before
        const auto liquids =
            std::count_if(batch.parts.begin(), batch.parts.end(), [](const PlannedTotal& part) { return part.liquid; });
        PrepJob wetting =
            job_for(PrepTask::first_wetting, batch.name,
                    buckets * wet_a_bucket + static_cast<double>(liquids) * weigh_a_part, share * batch.water_first);
        wetting.waiting = batch.rest;
        return crew_.do_by({wetting}, by);
    }

    /// Weighs and stirs in what goes in last; what is wetted later gets its share then.
    Time stir_in(const PlannedBatch& batch, const std::vector<LastPart>& last, double share, Time by) {
        PrepJob job =
            job_for(PrepTask::stir_in, batch.name, stirring_in(last, std::ceil(share * batch.buckets - 1e-9)));
        job.portions.clear();
        for (const LastPart& part : last) {
            job.portions.push_back({part.name, part.soaked ? Mass{} : share * part.mass});
            job.amount += job.portions.back().amount;
        }
        if (!batch.let_downs.empty()) job.feel = batch.feel;
        job.waiting = settle;
        return crew_.do_by({job}, by);
    }

    static PrepJob let_down(const std::string& mix, Mass take, Mass water, const std::string& feel) {
        const double buckets = std::max(1.0, std::ceil((take + water) / full_bucket - 1e-9));
        PrepJob job = job_for(PrepTask::let_down, mix, buckets * finish_a_bucket, water);
        job.waiting = settle;
        job.take = take;
        job.feel = feel;
        return job;
    }

    /// What comes out of the tub to be wetter, and what was kept drier than it is fed; returns when the first begins.
    Time let_down_all(const PlannedBatch& batch, Time by) {
        for (auto wetter = batch.let_downs.rbegin(); wetter != batch.let_downs.rend(); ++wetter)
            by = crew_.do_by({let_down(batch.name, wetter->take, wetter->water, wetter->feel)}, by);
        for (const KeptUse& use : batch.kept)
            if (use.more_water > least_poured)
                by = crew_.do_by({let_down("kept " + use.of.of, use.of.mass, use.more_water, use.fed_at)}, by);
        return by;
    }

    /// The balls that go in at once; returns when the first is begun.
    Time shape_first(const PlannedBatch& batch) {
        const int balls = first_balls(batch);
        PrepJob shape = job_for(PrepTask::shape, batch.name, balls * shape_a_ball);
        shape.count = balls;
        return crew_.do_by({shape}, loaded_);
    }

    static Mass to_riddle(const PlannedBatch& batch) {
        Mass mass = stirred_dry(batch) + batch.water_first;
        for (const KeptUse& use : batch.kept) mass += use.of.mass;
        return mass;
    }

    /// The evening before, for it takes the night, whether other work is done then or not.
    void thaw() {
        std::map<std::string, Mass> frozen;
        for (const PlannedBatch& batch : needs_.batches)
            for (const KeptUse& use : batch.kept)
                if (use.of.state == StockState::frozen) frozen[use.of.of] += use.of.mass;
        for (const auto& [mix, mass] : frozen)
            crew_.do_by({job_for(PrepTask::thaw, mix, take_out_to_thaw, mass)}, evening_of(needs_.start));
    }

    /// The dry parts, the evening before. Liquids go in with the first water, and the rest last.
    void weigh_parts(const PlannedBatch& batch, Time by) {
        const std::vector<std::string> parts = stirred_dry_parts(batch);
        if (parts.empty()) return weigh_each(batch, by);
        const Mass dry = stirred_dry(batch);
        if (parts.size() == 1 && batch.parts.size() > 1) return weigh_alone(parts.front(), dry, evening(by));
        const Time stirring = parts.size() > 1 ? stir_dry : Time{};
        PrepJob weigh =
            job_for(PrepTask::weigh, batch.name, static_cast<double>(parts.size()) * weigh_a_part + stirring, dry);
        weigh.count = static_cast<int>(parts.size());
        crew_.do_by({weigh}, evening(by));
    }

    /// Where nothing is stirred together dry: on the day.
    void weigh_each(const PlannedBatch& batch, Time by) {
        for (const PlannedTotal& part : batch.parts)
            if (!part.liquid && part.mass > part.soaked) weigh_alone(part.name, part.mass - part.soaked, by);
    }

    /// What goes in as it is and is not soaked is weighed on its own.
    void measure_out(const PlannedBatch& batch) {
        for (const PlannedTotal& part : batch.parts) {
            const Mass dry = part.mass - part.soaked;
            if (dry < 0.001 * part.mass || !measured_.insert(part.name).second) continue;
            weigh_alone(part.name, all_dry(part.name), is_fresh_feed(part.kind) ? loaded_ : evening(loaded_));
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

    void soak_and_pump() {
        std::vector<PlannedSoak> under_water;
        under_water.reserve(needs_.soaks.size());
        for (const PlannedSoak& soak : needs_.soaks)
            if (soak.strokes == 0 && !soak.for_the_hook) under_water.push_back(soak);
        for (const auto& group : soaked_together(under_water)) soak_in_one(group);
        for (const PlannedSoak& soak : needs_.soaks)
            if (soak.strokes > 0 || soak.for_the_hook)
                crew_.do_by({job_for(PrepTask::pump, soak.name, soak.lots * pumping_time, soak.pour)},
                            evening(loaded_));
    }

    /// Drained, and stood, before the first of what takes it is wetted.
    [[nodiscard]] Time stood_by(const PlannedSoak& soak) const {
        Time by = ready_by(soak.stand);
        for (const PlannedBatch& batch : needs_.batches) {
            const auto wetted = wetted_.find(batch.name);
            if (wetted != wetted_.end() && takes(batch, soak)) by = std::min(by, wetted->second);
        }
        return by;
    }

    void soak_in_one(const std::vector<const PlannedSoak*>& group) {
        std::vector<PrepJob> pours, drains;
        pours.reserve(group.size());
        drains.reserve(group.size());
        Time soaked, drained_by = loaded_;
        for (const PlannedSoak* soak : group) {
            pours.push_back(job_for(PrepTask::pour_on, soak->name, std::min(pour_on_pellets, soak->soak), soak->pour));
            pours.back().waiting = soak->soak;
            drains.push_back(job_for(PrepTask::drain, soak->name, drain_pellets));
            drains.back().waiting = soak->stand;
            soaked = std::max(soaked, soak->soak);
            drained_by = std::min(drained_by, stood_by(*soak) - soak->stand);
        }
        PrepJob drain = merged(drains);
        drain.at = soaked;
        const Time poured = crew_.do_by({merged(pours), drain}, drained_by + drain.waiting);
        for (const PlannedSoak* soak : group) weigh_alone(soak->name, soak->dry, evening(poured));
    }

    void weigh_alone(const std::string& name, Mass mass, Time by) {
        PrepJob weigh = job_for(PrepTask::weigh, name, weigh_a_part, mass);
        weigh.count = 1;
        crew_.do_by({weigh}, by);
    }

    static bool takes(const PlannedBatch& batch, const PlannedSoak& soak) {
        return std::any_of(batch.parts.begin(), batch.parts.end(),
                           [&](const PlannedTotal& part) { return part.name == soak.name && part.soaked > Mass{}; });
    }

    const PrepNeeds& needs_;
    Crew crew_;
    Time loaded_, arrived_;               // when loading begins, and when all is at the water
    std::map<std::string, Time> wetted_;  // when each is wetted first
    std::set<std::string> measured_;      // what goes in as it is, by name
};

/// What is thawed, always; what is weighed and pumped, where the evening is used and comes before its time.
bool is_evening(const PrepJob& job, const PrepNeeds& needs) {
    if (job.task == PrepTask::thaw) return true;
    return (job.task == PrepTask::weigh || job.task == PrepTask::pump) && needs.evening == PrepNeeds::Evening::used &&
           job.at < evening_of(needs.start) - hair;
}

}  // namespace

std::vector<PrepJob> prep_timetable(const PrepNeeds& needs) {
    std::vector<PrepJob> jobs = Timetable(needs).work_out();
    for (PrepJob& job : jobs)
        if (is_evening(job, needs)) job.when = PrepJob::When::evening_before;
    return weighed_together(jobs);
}

}  // namespace baitwright
