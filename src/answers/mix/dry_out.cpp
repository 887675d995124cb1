#include "answers/mix/dry_out.h"

#include <utility>

#include "answers/mix/tub_drying.h"
#include "answers/shared/wanted_feel.h"
#include "bait/pellets_alone.h"
#include "bait/resolve_mix.h"
#include "bait/wetted_mix.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr Time longest = 48.0 * hour;

void check_request(const DryRequest& r) {
    const auto refuse = [](const char* message, const char* hint) { throw UsageError("out-of-range", message, hint); };
    check_open_tub(r);
    if (!(r.hours >= 1.0 * minute && r.hours <= longest))
        refuse("the time must be from a minute to 48 hours", "for example --hours 5");
    if (!(r.dry_mass >= 10.0 * gram && r.dry_mass <= 10000.0 * kilogram))
        refuse("the dry mix must be from 10 g to 10 t", "for example --dry-mass 2kg");
}

/// One end of the band: how the tub dries where the air gets that share of Carrier's rate.
struct TubDrying {
    DryingCourse course;
    Mass wetted;
    Ratio at_first;

    [[nodiscard]] Mass per_hour() const { return course.first_rate() * (1.0 * hour) * wetted; }
    [[nodiscard]] Mass lost(Time time) const { return (at_first - course.left_after(time)) * wetted; }
    /// Until it is drier than the edge; nothing where that takes longer than is told.
    [[nodiscard]] std::optional<Time> time_to(double edge) const {
        if (!(edge > 0 && per_hour() > Mass{})) return std::nullopt;
        const Time time = course.time_to(edge);
        return time <= longest ? std::optional<Time>(time) : std::nullopt;
    }
};

TubDrying drying_of(const DryRequest& request, const MixWaterNeed& need, Ratio at_first, Ratio sheltered_to) {
    const Mass wetted = need.wetted_share * request.dry_mass;
    return {drying_course(need.marks, at_first, wetted, tub_loss(request, sheltered_to), request.face), wetted,
            at_first};
}

}  // namespace

DryAnswer dry_out(const Shelf& shelf, const Recipe& recipe, const DryRequest& request) {
    check_request(request);
    const ResolvedMix mix = resolve(recipe, shelf);
    refuse_pellets_alone(mix);
    const std::vector<Feel> feels = shelf.feels();
    const WantedFeel feel = wanted_feel(feels, mix.feel, request.feel);
    const MixWaterNeed need = water_need(numbers_of(mix).solids);
    if (!(need.wetted_share > 0))
        throw UsageError("takes-no-water",
                         "nothing in '" + mix.name + "' takes water, so it does not dry out of its feel",
                         "choose a mix of meals or crumbs");
    const double now = added_water_ratio(need.marks, feel.wetness),
                 edge = added_water_ratio(need.marks, lower_edge(feels, feel.name));
    TubDrying slow = drying_of(request, need, now, still_air_share), fast = drying_of(request, need, now, 1.0);
    if (fast.per_hour() < slow.per_hour()) std::swap(slow, fast);  // damp air that moves cools what the sun warms
    DryAnswer answer;
    answer.recipe = mix.name;
    answer.feel = feel.name;
    answer.wetness = feel.wetness;
    answer.dry_mass = request.dry_mass;
    answer.hours = request.hours;
    answer.covered = request.covered;
    answer.in_sun = request.in_sun;
    answer.loss_per_hour = {slow.per_hour(), fast.per_hour()};
    answer.until_it_leaves = {fast.time_to(edge), slow.time_to(edge)};
    answer.to_spray = {request.hours.in(hour)*slow.per_hour(), request.hours.in(hour)*fast.per_hour()};
    answer.lost = {slow.lost(request.hours), fast.lost(request.hours)};
    const auto after = [&](const TubDrying& tub) {
        return wetness_at(need.marks, tub.course.left_after(request.hours));
    };
    answer.wetness_after_low = after(slow);
    answer.wetness_after_high = after(fast);
    if (!answer.until_it_leaves.low || !answer.until_it_leaves.high)
        answer.warnings.push_back({"stays", "it may not leave its feel within 48 hours"});
    answer.becomes = feel_of(feels, answer.wetness_after_high).name;
    return answer;
}

}  // namespace baitwright
