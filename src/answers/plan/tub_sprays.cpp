#include "answers/plan/tub_sprays.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/tub_drying.h"
#include "bait/kitchen_rounding.h"
#include "quantities/hair.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Time drying_step = 10.0 * minute, spray_step = 5.0 * minute, told_to = 2.5 * minute;
constexpr Mass least_spray = 10.0 * gram, least_measured = 1.0 * gram;

/// The mix in the tub by its water: how much at first, and when it is drier than its feel.
struct WaterInFeel {
    MixWaterNeed need;
    Ratio first, edge;

    explicit WaterInFeel(const DryingTub& drying)
        : need(water_need(numbers_of(drying.fed.mix).solids)),
          first(added_water_ratio(need.marks, drying.fed.wetness)),
          edge(added_water_ratio(need.marks, lower_edge(drying.feels, drying.fed.feel))) {}
};

/// What of it is wetted and lies open so long after the start.
Mass wetted_at(const DryingTub& drying, const WaterInFeel& feel, Time moment,
               const std::optional<LaterWetting>& later) {
    return drying.tub.open_share(moment, later) * feel.need.wetted_share * dry_in(drying.tub.batch());
}

bool is_moment_of_spray(const DampTub& damp, Time at) {
    const double spray = at / damp.spray_every;
    return spray > 0.5 && spray < damp.sprays + 0.5 && std::abs(spray - std::round(spray)) < 1e-6;
}

/// Whether it stays in its feel with these sprays, before each of them and to the end.
bool stays_in_feel(const DryingTub& drying, const WaterInFeel& feel, const DampTub& damp) {
    Ratio water = feel.first;
    Mass before;
    for (Time at; at < damp.until - hair; at += spray_step) {
        const Time middle = at + 0.5 * spray_step;
        const Mass wetted = wetted_at(drying, feel, middle, damp.later);
        if (before > Mass{} && is_moment_of_spray(damp, at)) water = water + damp.spray / before;
        if (wetted > before) water = (before * water + (wetted - before) * feel.first) / wetted;
        before = wetted;
        if (!(wetted > Mass{})) continue;
        const Area open = drying.tub.face_of(drying.tub.open_share(middle, damp.later), drying.face);
        water = drying_course(feel.need.marks, water, wetted, drying.loss.middle, open)
                    .left_after(std::min(spray_step, damp.until - at));
        if (water < feel.edge) return false;
    }
    return true;
}

/// What makes up for the middle loss, as it can be measured: as water in a kitchen is, or to the gram where all sprays
/// together would then be more or less than the range has. Where that is no wider than their rounding, as it is.
Mass each_spray(const Range<Mass>& loss, int times) {
    const Mass exact = loss.middle / times;
    for (const Mass each : {kitchen_water(exact), std::round(exact.in(gram)) * gram})
        if (times * each >= loss.low && times * each <= loss.high) return each;
    return exact;
}

/// The same tub sprayed so often, from so long after the start on; nothing where that is not before its last put-in.
std::optional<DampTub> sprayed_every(const DampTub& damp, const DryingTub& drying, Time every) {
    DampTub sprayed = damp;
    sprayed.sprays = static_cast<int>(std::ceil(damp.until / every - 1e-9)) - 1;
    if (sprayed.sprays < 1) return std::nullopt;
    sprayed.spray_first = sprayed.spray_every = every;
    const auto lost = [&](MassFlux loss) {
        return drying.tub.lost_by(sprayed.sprays * every, loss, drying.face, damp.later);
    };
    sprayed.loss = {lost(drying.loss.low), lost(drying.loss.middle), lost(drying.loss.high)};
    sprayed.spray = each_spray(sprayed.loss, sprayed.sprays);
    return sprayed;
}

/// Each spray as large as all of them together may be, in whole grams: where most is lost at first, the middle comes
/// late.
DampTub with_largest_sprays(const DampTub& sprayed) {
    DampTub larger = sprayed;
    larger.spray = std::max(sprayed.spray, std::floor((sprayed.loss.high / sprayed.sprays).in(gram)) * gram);
    return larger;
}

bool is_in_time(const DampTub& sprayed, const DryingTub& drying, const WaterInFeel& feel) {
    if (!sprayed.leaves_feel) return true;
    return sprayed.spray_first + told_to <= *sprayed.leaves_feel && stays_in_feel(drying, feel, sprayed);
}

/// Sprayed so often, with the middle of what it loses, or where that keeps it not in its feel with more of it;
/// `keeps_feel` says whether that does.
std::optional<DampTub> kept_damp(const DampTub& damp, const DryingTub& drying, const WaterInFeel& feel, Time every) {
    auto sprayed = sprayed_every(damp, drying, every);
    if (!sprayed || is_in_time(*sprayed, drying, feel)) return sprayed;
    const DampTub larger = with_largest_sprays(*sprayed);
    sprayed->keeps_feel = is_in_time(larger, drying, feel);
    if (sprayed->keeps_feel) sprayed->spray = larger.spray;
    return sprayed;
}

}  // namespace

std::optional<Time> leaves_feel(const DryingTub& drying) {
    const WaterInFeel feel(drying);
    const TubCourse& tub = drying.tub;
    const MassFlux loss = drying.loss.middle;
    if (!(feel.edge > 0) || !(loss > MassFlux{})) return std::nullopt;
    Ratio water = feel.first;
    for (Time at; at < tub.until() - hair; at += drying_step) {
        const Time middle = at + 0.5 * drying_step;
        const Mass wetted = wetted_at(drying, feel, middle, {});
        if (!(wetted > Mass{})) break;
        const Area open = tub.face_of(tub.open_share(middle, {}), drying.face);
        const DryingCourse course = drying_course(feel.need.marks, water, wetted, loss, open);
        water = course.left_after(drying_step);
        if (water >= feel.edge) continue;
        const Time leaves = at + course.time_to(feel.edge);
        return leaves < tub.until() ? std::optional<Time>(leaves) : std::nullopt;
    }
    return std::nullopt;
}

void set_sprays(DampTub& damp, const DryingTub& drying) {
    const WaterInFeel feel(drying);
    for (const Time every : {30.0 * minute, 60.0 * minute})
        if (const auto sprayed = kept_damp(damp, drying, feel, every))
            if (sprayed->keeps_feel && sprayed->loss.middle >= sprayed->sprays * least_spray) {
                damp = *sprayed;
                return;
            }
    if (!damp.leaves_feel) return;
    std::optional<DampTub> last;
    for (const double minutes : {60.0, 30.0, 20.0, 15.0, 10.0}) {
        if (const auto sprayed = kept_damp(damp, drying, feel, minutes * minute)) last = sprayed;
        if (last && last->keeps_feel) break;
    }
    if (last && last->spray >= least_measured)
        damp = *last;
    else
        damp.keeps_feel = false;
}

}  // namespace baitwright
