#include "answers/mix/dry_out.h"

#include <algorithm>

#include "answers/shared/wanted_feel.h"
#include "bait/resolve_mix.h"
#include "bait/wetted_mix.h"
#include "physics/evaporation.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr double under_a_lid = 0.1;
constexpr Time longest = 48.0 * hour;

void check_request(const DryRequest& r) {
    const auto refuse = [](const char* message, const char* hint) { throw UsageError("out-of-range", message, hint); };
    if (!(r.face >= Area::from_si(1e-4) && r.face <= Area::from_si(10)))
        refuse("the tub must be from 1 cm2 to 10 m2 open", "for example --tub 40x30cm");
    if (!(r.hours >= 1.0 * minute && r.hours <= longest))
        refuse("the time must be from a minute to 48 hours", "for example --hours 5");
    if (!(r.dry_mass >= 10.0 * gram && r.dry_mass <= 10000.0 * kilogram))
        refuse("the dry mix must be from 10 g to 10 t", "for example --dry-mass 2kg");
    if (!(r.air >= Temperature::from_celsius(-5) && r.air <= Temperature::from_celsius(45)))
        refuse("the air must be from -5 to 45 degC", "for example --air-temp 22degC");
    if (!(r.humidity >= 0 && r.humidity <= 1))
        refuse("the humidity must be from 0 to 100 %", "for example --humidity 60%");
    if (!(r.wind >= Speed{} && r.wind <= 20.0 * metre_per_second))
        refuse("the wind must be from 0 to 20 m/s", "for example --wind 3m/s");
}

/// The lower edge of the feel's band.
double lower_edge(const std::vector<Feel>& feels, const std::string& name) {
    double edge = 0;
    for (const Feel& known : feels) {
        if (known.name == name) return edge;
        edge = known.below;
    }
    return 0;
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
    const HeatFlux sun = request.in_sun ? sun_on_bait : HeatFlux{};
    const MassFlux flux = wet_face_loss({request.air, request.humidity, request.wind, sun, sheltered_to});
    const Mass wetted = need.wetted_share * request.dry_mass;
    const double open_share = request.covered ? under_a_lid : 1.0;
    return {{at_first, need.marks.absorption, open_share * (flux * request.face / wetted)}, wetted, at_first};
}

}  // namespace

DryAnswer dry_out(const Shelf& shelf, const Recipe& recipe, const DryRequest& request) {
    check_request(request);
    const ResolvedMix mix = resolve(recipe, shelf);
    const std::vector<Feel> feels = shelf.feels();
    const WantedFeel feel = wanted_feel(feels, mix.feel, request.feel);
    const MixWaterNeed need = water_need(numbers_of(mix).solids);
    if (!(need.wetted_share > 0))
        throw UsageError("takes-no-water",
                         "nothing in '" + mix.name + "' takes water, so it does not dry out of its feel",
                         "choose a mix of meals or crumbs");
    const double now = added_water_ratio(need.marks, feel.wetness),
                 edge = added_water_ratio(need.marks, lower_edge(feels, feel.name));
    const TubDrying slow = drying_of(request, need, now, still_air_share), fast = drying_of(request, need, now, 1.0);
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
