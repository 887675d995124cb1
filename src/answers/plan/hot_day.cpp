#include "answers/plan/hot_day.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/tub_drying.h"
#include "answers/plan/last_in_tub.h"
#include "answers/plan/prep_minutes.h"
#include "bait/kitchen_rounding.h"
#include "quantities/hair.h"
#include "quantities/listed.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double share_that_matters = 0.10;  // of its water
constexpr Time damp_step = 10.0 * minute, long_stand = 2.0 * hour;
constexpr Mass least_spray = 10.0 * gram, least_urgent_spray = 5.0 * gram;
constexpr double least_half = 0.15;              // less is not worth a wetting of its own
constexpr Area usual_tub = Area::from_si(0.12);  // 40 x 30 cm
constexpr double felt_warm_from = 20, felt_hot_from = 25, sun_is_worth = 5;

/// What the air does to a wet face, still or moving, and between them. In damp air moving air may take less: it cools
/// what the sun warms.
Range<MassFlux> losses_in(const DryRequest& air) {
    const MassFlux still = tub_loss(air, still_air_share), moving = tub_loss(air, 1.0);
    return {std::min(still, moving), 0.5 * (still + moving), std::max(still, moving)};
}

/// All that is dry in the tub, in its kept mix too.
Mass dry_in(const PlannedBatch& batch) {
    Mass dry = batch.dry;
    for (const KeptUse& use : batch.kept) dry += use.dry;
    return dry;
}

/// All the water in it likewise.
Mass water_held(const PlannedBatch& batch) {
    Mass water = batch.water;
    for (const KeptUse& use : batch.kept) water += use.water;
    return water;
}

/// One tub over the session: what of it lies open, and what that loses.
class TubCourse {
public:
    TubCourse(const SessionPlan& plan, const PlannedBatch& batch, const UnrolledStrategy& session) : batch_(batch) {
        for (const std::size_t feed : batch.feeds)
            if (session.feeds[feed].slow_times > 0) kept_ready_ = plan.length;
        fed_.reserve(plan.put_ins.size() + 1);
        fed_.push_back({{}, {}});
        for (const PlannedFeed& put_in : plan.put_ins) {
            if (std::find(batch.feeds.begin(), batch.feeds.end(), put_in.feed) == batch.feeds.end()) continue;
            fed_.push_back({put_in.at, fed_.back().mass + plan.people * put_in.mass});
        }
    }

    /// The last of it goes in, or may.
    [[nodiscard]] Time until() const { return std::max(fed_.back().at, kept_ready_); }

    /// It may be called for at any moment, as bites slow.
    [[nodiscard]] bool is_kept_ready() const { return kept_ready_ > Time{}; }

    /// The share of what goes in that is in before.
    [[nodiscard]] double share_before(Time moment) const {
        const Mass all = fed_.back().mass;
        return all > Mass{} ? double(fed_before(moment) / all) : 1.0;
    }

    /// The first of it to go in from then on.
    [[nodiscard]] Time first_from(Time moment) const {
        for (std::size_t i = 1; i < fed_.size(); ++i)
            if (fed_[i].at >= moment - hair) return fed_[i].at;
        return until();
    }

    /// The share of the batch that lies open then: all that is wetted and not in yet. The spare is in it until the rest
    /// is wetted later.
    [[nodiscard]] double open_share(Time moment, const std::optional<LaterWetting>& later) const {
        const double fed = fed_before(moment) / batch_.wet_mass;
        const double wetted = later && moment < later->needed - hair ? 1 - later->dry / batch_.dry : 1.0;
        return std::clamp(wetted - fed, 0.0, 1.0);
    }

    /// Of that share, no thinner than a layer may be.
    [[nodiscard]] Area face_of(double share, Area tub) const {
        return std::min(tub, Area::from_si((share * batch_.wet_volume).si() / thinnest_layer.si()));
    }

    /// What it loses from the start until then, kept damp.
    [[nodiscard]] Mass lost_by(Time moment, MassFlux loss, Area tub, const std::optional<LaterWetting>& later) const {
        Mass lost;
        for (Time at; at < moment - hair; at += damp_step) {
            const Time lasts = std::min(damp_step, moment - at);
            lost += loss * face_of(open_share(at + 0.5 * lasts, later), tub) * lasts;
        }
        return lost;
    }

private:
    struct FedBy {
        Time at;
        Mass mass;  // by everybody, up to and with that moment
    };

    [[nodiscard]] Mass fed_before(Time moment) const {
        const auto after = std::lower_bound(fed_.begin() + 1, fed_.end(), moment - hair,
                                            [](const FedBy& fed, Time when) { return fed.at < when; });
        return std::prev(after)->mass;
    }

    const PlannedBatch& batch_;
    std::vector<FedBy> fed_;  // by time, from nothing on
    Time kept_ready_;         // for slow bites, until then
};

/// When it is drier than its feel, left alone in one go; nothing where the last of it is in before.
std::optional<Time> leaves_feel(const TubCourse& tub, const PlannedBatch& batch, const FedMix& fed,
                                const std::vector<Feel>& feels, MassFlux loss, Area face) {
    const MixWaterNeed need = water_need(numbers_of(fed.mix).solids);
    const Ratio edge = added_water_ratio(need.marks, lower_edge(feels, fed.feel));
    if (!(edge > 0) || !(loss > MassFlux{})) return std::nullopt;
    Ratio water = added_water_ratio(need.marks, fed.wetness);
    for (Time at; at < tub.until() - hair; at += damp_step) {
        const double share = tub.open_share(at + 0.5 * damp_step, {});
        const Mass wetted = share * need.wetted_share * dry_in(batch);
        if (!(wetted > Mass{})) break;
        const DryingCourse course = drying_course(need.marks, water, wetted, loss, tub.face_of(share, face));
        water = course.left_after(damp_step);
        if (water >= edge) continue;
        const Time leaves = at + course.time_to(edge);
        return leaves < tub.until() ? std::optional<Time>(leaves) : std::nullopt;
    }
    return std::nullopt;
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

/// What makes up for the middle loss, as it can be measured: as water in a kitchen is, or to the gram where all sprays
/// together would then be more or less than the range has. Where that is no wider than their rounding, as it is.
Mass each_spray(const Range<Mass>& loss, int times) {
    const Mass exact = loss.middle / times;
    for (const Mass each : {kitchen_water(exact), std::round(exact.in(gram)) * gram})
        if (times * each >= loss.low && times * each <= loss.high) return each;
    return exact;
}

/// By the half hour, or by the hour where that is too little to spray and it can wait so long; the last before its last
/// put-in.
void spray(DampTub& damp, const TubCourse& tub, const Range<MassFlux>& loss, Area face) {
    for (const Time every : {30.0 * minute, 60.0 * minute}) {
        const int times = static_cast<int>(std::ceil(tub.until() / every - 1e-9)) - 1;
        if (times < 1) return;
        const Time last = times * every;
        const Mass lost = tub.lost_by(last, loss.middle, face, damp.later);
        const bool can_wait = !damp.leaves_feel || *damp.leaves_feel >= 1.0 * hour;
        if (lost < times * (can_wait ? least_spray : least_urgent_spray)) continue;
        damp.spray_first = damp.spray_every = every;
        damp.sprays = times;
        damp.loss = {tub.lost_by(last, loss.low, face, damp.later), lost,
                     tub.lost_by(last, loss.high, face, damp.later)};
        damp.spray = each_spray(damp.loss, times);
        return;
    }
}

DampTub damp_tub(const SessionPlan& plan, std::size_t place, const UnrolledStrategy& session,
                 const std::vector<Feel>& feels, const Range<MassFlux>& loss, Area face) {
    const PlannedBatch& batch = plan.batches[place];
    const FedMix& fed = wetted_as(batch, session);
    const TubCourse tub(plan, batch, session);
    DampTub damp;
    damp.batch = place;
    damp.until = tub.until();
    damp.leaves_feel = leaves_feel(tub, batch, fed, feels, loss.middle, face);
    const Mass lost = tub.lost_by(damp.until, loss.middle, face, {});
    const bool worth_it = lost >= damp.until.in(hour)*least_spray;
    if (!worth_it || (!damp.leaves_feel && lost <= share_that_matters * water_held(batch))) return damp;
    damp.later = by_halves(tub, batch);
    spray(damp, tub, loss, face);
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
