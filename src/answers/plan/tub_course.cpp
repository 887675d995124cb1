#include "answers/plan/tub_course.h"

#include <algorithm>
#include <iterator>

#include "answers/mix/tub_drying.h"
#include "quantities/hair.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Time damp_step = 10.0 * minute;

}  // namespace

Mass dry_in(const PlannedBatch& batch) {
    Mass dry = batch.dry;
    for (const KeptUse& use : batch.kept) dry += use.dry;
    return dry;
}

Mass water_held(const PlannedBatch& batch) {
    Mass water = batch.water;
    for (const KeptUse& use : batch.kept) water += use.water;
    return water;
}

TubCourse::TubCourse(const SessionPlan& plan, const PlannedBatch& batch, const UnrolledStrategy& session)
    : batch_(batch) {
    for (const std::size_t feed : batch.feeds)
        if (session.feeds[feed].slow_times > 0) kept_ready_ = plan.length;
    fed_.reserve(plan.put_ins.size() + 1);
    fed_.push_back({{}, {}});
    for (const PlannedFeed& put_in : plan.put_ins) {
        if (std::find(batch.feeds.begin(), batch.feeds.end(), put_in.feed) == batch.feeds.end()) continue;
        fed_.push_back({put_in.at, fed_.back().mass + plan.people * put_in.mass});
    }
}

Time TubCourse::until() const {
    return std::max(fed_.back().at, kept_ready_);
}

double TubCourse::share_before(Time moment) const {
    const Mass all = fed_.back().mass;
    return all > Mass{} ? double(fed_before(moment) / all) : 1.0;
}

Time TubCourse::first_from(Time moment) const {
    for (std::size_t i = 1; i < fed_.size(); ++i)
        if (fed_[i].at >= moment - hair) return fed_[i].at;
    return until();
}

double TubCourse::open_share(Time moment, const std::optional<LaterWetting>& later) const {
    const double fed = fed_before(moment) / batch_.wet_mass;
    const double wetted = later && moment < later->needed - hair ? 1 - later->dry / batch_.dry : 1.0;
    return std::clamp(wetted - fed, 0.0, 1.0);
}

Area TubCourse::face_of(double share, Area tub) const {
    return std::min(tub, Area::from_si((share * batch_.wet_volume).si() / thinnest_layer.si()));
}

Mass TubCourse::lost_by(Time moment, MassFlux loss, Area tub, const std::optional<LaterWetting>& later) const {
    Mass lost;
    for (Time at; at < moment - hair; at += damp_step) {
        const Time lasts = std::min(damp_step, moment - at);
        lost += loss * face_of(open_share(at + 0.5 * lasts, later), tub) * lasts;
    }
    return lost;
}

Mass TubCourse::fed_before(Time moment) const {
    const auto after = std::lower_bound(fed_.begin() + 1, fed_.end(), moment - hair,
                                        [](const FedBy& fed, Time when) { return fed.at < when; });
    return std::prev(after)->mass;
}

}  // namespace baitwright
