#include "answers/plan/hot_day.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/tub_drying.h"
#include "answers/plan/last_in_tub.h"
#include "answers/plan/prep_minutes.h"
#include "answers/plan/tub_course.h"
#include "answers/plan/tub_sprays.h"
#include "quantities/listed.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double share_that_matters = 0.10;  // of its water
constexpr Time long_stand = 2.0 * hour;
constexpr Mass least_hourly = 10.0 * gram;
constexpr double least_half = 0.15;              // less is not worth a wetting of its own
constexpr Area usual_tub = Area::from_si(0.12);  // 40 x 30 cm
constexpr double felt_warm_from = 20, felt_hot_from = 25, sun_is_worth = 5;

/// What the air does to a wet face, still or moving, and between them. In damp air moving air may take less: it cools
/// what the sun warms.
Range<MassFlux> losses_in(const DryRequest& air) {
    const MassFlux still = tub_loss(air, still_air_share), moving = tub_loss(air, 1.0);
    return {std::min(still, moving), 0.5 * (still + moving), std::max(still, moving)};
}

/// At the feel of the tub itself, from which wetter ones are let down.
const FedMix& wetted_as(const PlannedBatch& batch, const UnrolledStrategy& session) {
    for (const std::size_t feed : batch.feeds)
        if (session.feeds[feed].fed.feel == batch.feel) return session.feeds[feed].fed;
    return session.feeds[batch.feeds.front()].fed;
}

/// What goes in in the second half of its time stays dry, where its rest can end when it is needed. What is kept mix in
/// part is wetted in one go.
std::optional<LaterWetting> by_halves(const TubCourse& tub, const PlannedBatch& batch) {
    if (tub.until() < long_stand || tub.is_kept_ready() || !batch.let_downs.empty() || !batch.kept.empty())
        return std::nullopt;
    LaterWetting later;
    later.needed = tub.first_from(0.5 * tub.until());
    const double share = 1 - tub.share_before(later.needed);
    const double buckets = std::ceil(share * batch.buckets - 1e-9);
    later.hands_on =
        buckets * (wet_a_bucket + riddle_a_bucket + finish_a_bucket) + stirring_in(last_in_tub(batch), buckets);
    later.rest = batch.rest;
    later.dry = share * batch.dry;
    later.water_first = share * batch.water_first;
    later.water_rest = share * batch.water_rest;
    later.at = std::floor((later.needed - later.hands_on - later.rest - settle).in(minute) + 1e-9) * minute;
    if (!(later.at > Time{}) || share > 1 - least_half || share < least_half) return std::nullopt;
    return later;
}

DampTub damp_tub(const SessionPlan& plan, std::size_t place, const UnrolledStrategy& session,
                 const std::vector<Feel>& feels, const Range<MassFlux>& loss, Area face) {
    const PlannedBatch& batch = plan.batches[place];
    const TubCourse tub(plan, batch, session);
    const DryingTub drying{tub, wetted_as(batch, session), feels, loss, face};
    DampTub damp;
    damp.batch = place;
    damp.until = tub.until();
    damp.leaves_feel = leaves_feel(drying);
    const Mass lost = tub.lost_by(damp.until, loss.middle, face, {});
    const bool worth_it = lost >= damp.until.in(hour)*least_hourly;
    if (!damp.leaves_feel && (!worth_it || lost <= share_that_matters * water_held(batch))) return damp;
    if (worth_it) damp.later = by_halves(tub, batch);
    set_sprays(damp, drying);
    return damp;
}

DryRequest air_of(const HotDayRequest& request) {
    DryRequest air;
    air.face = request.tub.value_or(usual_tub);
    air.air = request.air.temperature.value_or(air.air);
    air.humidity = request.air.humidity.value_or(air.humidity);
    air.wind = request.air.wind.value_or(air.wind);
    air.in_sun = request.air.sun;
    return air;
}

/// As warm as it feels to what lies in it.
double felt_celsius(const DryRequest& air) {
    return air.air.in_celsius() + (air.in_sun ? sun_is_worth : 0.0);
}

}  // namespace

HotDay hot_day(const std::vector<Feel>& feels, const UnrolledStrategy& session, const SessionPlan& plan,
               const HotDayRequest& request) {
    HotDay hot;
    hot.air = air_of(request);
    hot.tub_assumed = !request.tub;
    check_open_tub(hot.air);
    const Range<MassFlux> loss = losses_in(hot.air);
    for (std::size_t place = 0; place < plan.batches.size(); ++place) {
        const PlannedBatch& batch = plan.batches[place];
        if (batch.feel.empty()) continue;
        DampTub damp = damp_tub(plan, place, session, feels, loss, hot.air.face);
        hot.sprayed += damp.sprayed();
        if (damp.until > Time{}) hot.tubs.push_back(damp);
    }
    if (felt_celsius(hot.air) >= felt_warm_from) hot.cool = kept_cool(session, plan);
    return hot;
}

std::optional<Warning> live_feed_warning(const HotDay& hot) {
    if (felt_celsius(hot.air) < felt_hot_from) return std::nullopt;
    std::vector<std::string> live;
    for (const CoolThing& thing : hot.cool)
        if (thing.kind == KeptCool::live) live.push_back(thing.name);
    if (live.empty()) return std::nullopt;
    return Warning{"live-feed-suffers", listed(live) +
                                            " will suffer in this heat: keep cold and out of the sun, what "
                                            "crawls with air, and bring no more than you feed (common practice)"};
}

}  // namespace baitwright
