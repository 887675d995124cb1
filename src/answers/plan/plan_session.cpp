#include "answers/plan/plan_session.h"

#include <algorithm>
#include <cmath>

#include "answers/plan/hot_day.h"
#include "answers/plan/plan_advice.h"
#include "answers/plan/plan_batches.h"
#include "answers/plan/prep_timetable.h"
#include "answers/plan/slow_feeds.h"
#include "answers/plan/venue_breaches.h"
#include "answers/shared/check_temperature.h"
#include "answers/strategy/kept_in_feeds.h"
#include "bait/venue_names.h"
#include "quantities/clock.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Time swim_step = 30.0 * minute;

Temperature water_of(const Strategy& strategy, const PlanRequest& request) {
    if (request.water) return *request.water;
    return strategy.water.temperature.value_or(Temperature::from_celsius(15));
}

UnrolledStrategy unrolled_for(const Shelf& shelf, const Strategy& strategy, StrategyRequest what_if, int people) {
    what_if.people = people;
    what_if.times = 1;
    what_if.reused = 0.0;
    return unroll_strategy(shelf, strategy, what_if);
}

std::vector<PlannedFeed> planned_put_ins(const UnrolledStrategy& session) {
    std::vector<PlannedFeed> put_ins;
    for (const PutIn& put_in : session.put_ins) {
        const FeedNeed& need = session.feeds[put_in.feed];
        put_ins.push_back({put_in.at,
                           need.name,
                           put_in.feed,
                           put_in.form,
                           put_in.count,
                           need.size,
                           {},
                           1,
                           put_in.each_volume,
                           put_in.each_mass,
                           put_in.wet_volume,
                           put_in.wet_mass});
    }
    return put_ins;
}

/// A running sum over the put-ins, told at the first, every half hour, and at the end.
std::vector<InTheSwim> swim_over_time(const UnrolledStrategy& session) {
    std::vector<InTheSwim> swim;
    InTheSwim so_far;
    std::size_t next = 0;
    const auto up_to = [&](Time moment) {
        for (; next < session.put_ins.size() && session.put_ins[next].at <= moment; ++next) {
            const PutIn& put_in = session.put_ins[next];
            const FeedNeed& need = session.feeds[put_in.feed];
            so_far.grains += need.free_offerings / need.portions * put_in.count;
            so_far.mass += put_in.wet_mass;
        }
        so_far.at = moment;
        swim.push_back(so_far);
    };
    for (Time moment; moment < session.length - 1e-6 * second; moment += swim_step) up_to(moment);
    up_to(session.length);
    return swim;
}

/// Nothing is squeezed before it goes in.
Volume in_the_tub(const FeedNeed& need) {
    if (need.fed.state != MixState::squeezed) return need.wet_volume;
    const FedMix loose = not_pressed(need.fed);
    const FedPerDry each = per_dry(loose, numbers_of(loose.mix));
    return each.wet_volume * (need.wet_mass / each.wet_mass);
}

void fill_amounts(SessionPlan& plan, const UnrolledStrategy& session) {
    for (const FeedNeed& need : session.feeds)
        plan.feeds.push_back({need.name, need.form, need.size, need.count, need.put_ins, need.portions, need.wet_mass,
                              need.wet_volume, in_the_tub(need), need.written});
    for (const IngredientNeed& need : session.totals)
        if (!is_all_kept(need)) plan.totals.push_back(planned_total(need));
    plan.kept = session.kept;
    plan.hookbaits = session.hookbaits;
    plan.dry = session.dry;
    plan.wet_mass = session.wet_mass;
    plan.wet_volume = session.wet_volume;
    plan.cautions = session.cautions;
    for (const PlannedBatch& batch : plan.batches) {
        plan.containers += batch.containers;
        plan.water_to_carry += batch.water;
    }
    for (const PlannedSoak& soak : plan.soaks) plan.water_to_carry += soak.pour;
}

/// The job of the day that takes longest to wait for: what to skip or soften first.
std::string what_to_soften(const SessionPlan& plan) {
    const PlannedSoak* longest = nullptr;
    for (const PlannedSoak& soak : plan.soaks)
        if (soak.strokes == 0 && (!longest || soak.soak + soak.stand > longest->soak + longest->stand)) longest = &soak;
    Time rest;
    for (const PlannedBatch& batch : plan.batches) rest = std::max(rest, batch.rest);
    if (longest && longest->soak + longest->stand >= rest)
        return "leave out the soak of " + longest->name + " by giving it its water in the bag at home, or feed it dry";
    if (rest > Time{}) return "wet the mix to half at home and the rest at the water, or make less of it";
    return "weigh and pump the evening before";
}

/// What is frozen is taken out the evening before, whenever the work begins.
Time first_work(const SessionPlan& plan) {
    for (const PrepJob& job : plan.prep)
        if (job.task != PrepTask::thaw) return job.at;
    return {};
}

void refuse_late_work(const SessionPlan& plan, const PlanRequest& request) {
    if (!request.work_from) return;
    const Time needed = Time{} - first_work(plan);
    if (needed <= *request.work_from + 1e-6 * second) return;
    const double minutes = std::ceil(needed.in(minute)-1e-9);
    std::string hint = "begin " + hours_and_minutes(minutes * minute) + " before the start";
    if (plan.start && request.work_from_clock)
        hint = "begin earlier, or start at " +
               clock_text(*plan.start + std::ceil((needed - *request.work_from).in(minute)-1e-9));
    else if (plan.start)
        hint += ", at " + clock_text(*plan.start - minutes);
    throw Error(FaultClass::answer_is_no, Fault{"no-time",
                                                (plan.travel > Time{} ? "the work and the way to the water take "
                                                                      : "the work before the start takes ") +
                                                    hours_and_minutes(needed) + ", and there are only " +
                                                    hours_and_minutes(*request.work_from) + " for it",
                                                hint + "; or " + what_to_soften(plan)});
}

void plan_prep(SessionPlan& plan, const PlanRequest& request) {
    plan.hands = request.hands;
    plan.travel = request.travel;
    const std::vector<PlannedFeed> ready = ready_at_start(plan);
    plan.prep = prep_timetable({plan.batches, plan.soaks, ready, plan.people, plan.start, plan.hands, plan.travel,
                                request.work_from ? PrepNeeds::Evening::not_used : PrepNeeds::Evening::used});
    refuse_late_work(plan, request);
    for (const PrepJob& job : plan.prep) {
        plan.hands_on += job.hands_on;
        if (job.when == PrepJob::When::on_the_day) plan.begin = std::min(plan.begin, job.at);
    }
}

/// Of the person, else of the strategy.
AirSetting air_over_tubs(const Strategy& strategy, const PlanRequest& request) {
    AirSetting air = request.air.value_or(AirSetting{});
    if (!air.temperature) air.temperature = strategy.air.temperature;
    if (!air.humidity) air.humidity = strategy.air.humidity;
    if (!air.wind) air.wind = strategy.air.wind;
    air.sun = air.sun || strategy.air.sun;
    return air;
}

/// What the sun and the air do, where anybody said what they are; what it takes is carried, and its mix wetted later.
void plan_hot_day(SessionPlan& plan, const std::vector<Feel>& feels, const UnrolledStrategy& session,
                  const HotDayRequest& request) {
    plan.hot_day = hot_day(feels, session, plan, request);
    plan.water_to_carry += plan.hot_day->sprayed;
    for (const DampTub& tub : plan.hot_day->tubs)
        if (tub.later) plan.batches[tub.batch].kept_dry = tub.later->dry;
    if (auto warning = live_feed_warning(*plan.hot_day)) plan.warnings.push_back(*std::move(warning));
}

void hold_against_venue(SessionPlan& plan, const Venue& venue, const Shelf& shelf, const UnrolledStrategy& one) {
    std::vector<Fault> unknown = unknown_names(venue, shelf);
    if (!unknown.empty()) throw InputError(std::move(unknown));
    plan.venue = venue.name;
    plan.venue_notes = venue.rules;
    plan.breaches = venue_breaches(venue, one, plan.people);
}

/// What it takes from the log, said once.
void tell_learnt_of_plan(const UnrolledStrategy& session, SessionPlan& plan) {
    for (const FeedNeed& feed : session.feeds) {
        plan.learnt.add_water(feed.fed.mix);
        if (feed.fed.state == MixState::cupped) plan.learnt.add_cup(feed.fed.mix);
    }
    if (auto told = plan.learnt.told()) plan.warnings.push_back(*std::move(told));
}

}  // namespace

SessionPlan plan_session(const Shelf& shelf, const Strategy& strategy, const StockOnHand& stock,
                         const PlanRequest& request) {
    SessionPlan plan;
    CostRequest costing = request.cost;
    costing.ranges = CostRequest::Ranges::left_out;
    plan.cost = cost_strategy(shelf, strategy, stock, costing);
    plan.people = costing.what_if.people;
    plan.times = costing.what_if.times;
    const StrategyRequest what_if = with_kept(costing.what_if, strategy, stock, costing.on);
    const UnrolledStrategy session = unrolled_for(shelf, strategy, what_if, plan.people);
    plan.strategy = session.name;
    plan.length = session.length;
    plan.start = request.start;
    plan.water = water_of(strategy, request);
    check_water_temperature(plan.water);
    plan.warnings = plan.cost.warnings;
    tell_learnt_of_plan(session, plan);
    plan.put_ins = planned_put_ins(session);
    plan.slow = planned_slow_feeds(session);
    plan.batches = plan_batches(session, plan.water);
    plan.soaks = plan_soaks(shelf, session, plan.batches, plan.water, request.pump);
    fill_amounts(plan, session);
    plan.in_the_swim = swim_over_time(session);
    for (Warning& warning : check_kit(request.kit, plan.put_ins, plan.slow))
        plan.warnings.push_back(std::move(warning));
    Volume mixed;
    for (const PlannedBatch& batch : plan.batches)
        if (!batch.feel.empty()) mixed += batch.wet_volume;
    if (auto small = check_tubs(request.kit, mixed)) plan.warnings.push_back(*std::move(small));
    if (request.air || is_known(strategy.air))
        plan_hot_day(plan, shelf.feels(), session, {air_over_tubs(strategy, request), request.tub});
    plan_prep(plan, request);
    if (request.venue)
        hold_against_venue(plan, *request.venue, shelf, unrolled_for(shelf, strategy, costing.what_if, 1));
    plan.advice = plan_advice(strategy, plan);
    return plan;
}

}  // namespace baitwright
