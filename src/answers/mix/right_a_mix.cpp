#include "answers/mix/right_a_mix.h"

#include <algorithm>

#include "answers/mix/tub_judgement.h"
#include "answers/shared/check_temperature.h"
#include "answers/shared/mix_amount.h"
#include "bait/pellets_alone.h"
#include "bait/resolve_mix.h"
#include "bait/strategy_limits.h"
#include "bait/uptake.h"
#include "bait/wetted_mix.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/units.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

constexpr double settled_share = 0.9;

/// The water that makes the tub weigh what it does, with the doses that go by water and by wet mass.
Ratio water_of_weight(const MixNumbers& numbers, Ratio wet_mass) {
    // Wet mass rises linearly with the water already in: two points give the line.
    const double none = wet(numbers, 0.0, 0.0).wet_mass, one = wet(numbers, 0.0, 1.0).wet_mass;
    return (wet_mass - none) / (one - none);
}

Ratio water_per_dry(const MixNumbers& numbers, const TubRequest& request) {
    if (const WaterPoured* poured = std::get_if<WaterPoured>(&request.water)) {
        if (poured->volume < Volume{})
            throw UsageError("out-of-range", "the water must not be below zero",
                             "for example --added 700ml; 0ml where none went in yet");
        return poured->volume * (1.0 * gram_per_millilitre) / request.dry_mass;
    }
    const Ratio water = water_of_weight(numbers, std::get<TubWeighs>(request.water).mass / request.dry_mass);
    if (water < -1e-9)
        throw UsageError(
            "out-of-range", "the tub weighs less than its dry mix and additives would alone",
            "weigh what is in the tub without the tub itself: wet, as in --weighs 1.6kg of --dry-mass 1kg");
    return std::max<double>(0, water);
}

void check_size(const TubPortion& portion) {
    using namespace strategy_limits;
    if (const Balls* balls = std::get_if<Balls>(&portion)) {
        if (!(balls->diameter >= smallest_ball && balls->diameter <= largest_ball))
            throw UsageError("out-of-range", "a ball must be " + std::string(ball_range), "for example --balls 55mm");
    } else if (const Volume each = std::get<Vessels>(portion).each;
               !(each >= smallest_vessel && each <= largest_vessel))
        throw UsageError("out-of-range",
                         "a " + std::get<Vessels>(portion).called + " must hold " + std::string(vessel_range),
                         "for example --cups 250ml");
}

/// Refuses a size that is not possible, and what the feel is too dry or too wet for.
void check_portions(const TubRequest& request, const WantedFeel& wanted) {
    for (const TubPortion& portion : request.portions) {
        check_size(portion);
        MixRequest asked;
        std::visit([&](const auto& one) { asked.target = one; }, portion);
        static_cast<void>(wanted_state(asked, wanted.name, wanted.wetness));
    }
}

void check_request(const TubRequest& request) {
    if (!(request.dry_mass > Mass{}) || request.dry_mass > 10000.0 * kilogram)
        throw UsageError("out-of-range", "the dry mass must be above zero and at most 10 t",
                         "for example --dry-mass 1kg");
    if (request.since && *request.since < Time{})
        throw UsageError("out-of-range", "the time since the water went in must not be below zero",
                         "for example --minutes 5");
    check_water_temperature(request.water_temperature);
}

Ratio capped(Ratio wetness) {
    return std::min<double>(wetness, wettest);
}

void add_warnings(double settled, double water_taking, TubAnswer& answer) {
    if (settled > wettest) answer.warnings.push_back({"beyond-scale", "it is wetter than our scale tells apart: soup"});
    if (!(water_taking > 0))
        answer.warnings.push_back(
            {"takes-no-water", "nothing in this mix takes water, so it cannot be put right by water"});
}

/// What the tub holds as it stands and once it is right, and what it makes then.
/// What it takes from the log, said once.
void tell_learnt_of_tub(const ResolvedMix& mix, const TubRequest& request, TubAnswer& answer) {
    answer.learnt.add_water(mix);
    const auto cup = [](const TubPortion& portion) { return std::holds_alternative<Vessels>(portion); };
    if (std::any_of(request.portions.begin(), request.portions.end(), cup)) answer.learnt.add_cup(mix);
    if (auto told = answer.learnt.told()) answer.warnings.push_back(*std::move(told));
}

void tell_room(const ResolvedMix& mix, const TubRequest& request, const TubJudgement& judged, TubAnswer& answer) {
    const WettedTub tub{answer.dry_mass, answer.water_in, answer.wanted_wetness};
    const SettledTub right = tub_put_right(mix, tub, judged);
    answer.as_it_stands = room_of(tub_as_it_stands(mix, tub, judged));
    answer.put_right = room_of(right);
    answer.makes = makes_of(right, request.portions, request.seed);
    if (answer.makes.size() < request.portions.size())
        answer.warnings.push_back({"unfit-state", "as it stands it is " +
                                                      std::string(answer.wetness_settled < 1 ? "too dry" : "too wet") +
                                                      " to squeeze, so no balls are told"});
}

/// How wet it is by now, and once it has drunk.
void tell_wetness(const MixUptake& uptake, const WettedMix& as_it_is, const TubRequest& request,
                  const std::vector<Feel>& feels, TubAnswer& answer) {
    const MixWaterNeed& need = as_it_is.need;
    const Ratio ratio = as_it_is.wetting_present / need.wetted_share;
    const double settled = wetness_at(need.marks, ratio);
    const Ratio taken = request.since ? uptake.share_taken(*request.since) : Ratio(1.0);
    answer.wetness_settled = capped(settled);
    // Where nothing has been drunk yet A(t) is 0, and "no water" would read as "just holds".
    answer.wetness_now = ratio > 0 ? capped(wetness_at(marks_after(need.marks, taken), ratio)) : answer.wetness_settled;
    answer.feel_settled = feel_of(feels, answer.wetness_settled).name;
    answer.feel_now = feel_of(feels, answer.wetness_now).name;
    if (request.since && ratio > 0)
        answer.settles_in = std::max(Time{}, uptake.time_to(settled_share) - *request.since);
    add_warnings(settled, 1, answer);
}

}  // namespace

TubAnswer right_a_mix(const Shelf& shelf, const Recipe& recipe, const TubRequest& request) {
    check_request(request);
    const ResolvedMix mix = resolve(recipe, shelf);
    refuse_pellets_alone(mix);
    const std::vector<Feel> feels = shelf.feels();
    const WantedFeel wanted = wanted_feel(feels, mix.feel, request.feel);
    check_portions(request, wanted);
    const MixNumbers numbers = numbers_of(mix);
    const Ratio water_in = water_per_dry(numbers, request);

    TubAnswer answer;
    answer.recipe = mix.name;
    answer.wanted_feel = wanted.name;
    answer.wanted_wetness = wanted.wetness;
    answer.dry_mass = request.dry_mass;
    answer.water_in = water_in * request.dry_mass;
    tell_learnt_of_tub(mix, request, answer);

    const WettedMix as_it_is = wet(numbers, 0.0, water_in);
    const MixWaterNeed& need = as_it_is.need;
    add_warnings(0, need.wetted_share, answer);
    if (!(need.wetted_share > 0)) {
        answer.feel_now = answer.feel_settled = feels.front().name;
        answer.all_parts_take_water = false;
        tell_room(mix, request, {}, answer);
        return answer;
    }
    tell_wetness(MixUptake(mix, request.water_temperature), as_it_is, request, feels, answer);
    const TubJudgement judged = judge_tub(numbers, feels, wanted, request.dry_mass, water_in);
    answer.water_to_add = judged.water;
    answer.dry_to_add = judged.dry_mix;
    answer.all_parts_take_water = need.wetted_share > 1 - 1e-9;
    tell_room(mix, request, judged, answer);
    return answer;
}

}  // namespace baitwright
