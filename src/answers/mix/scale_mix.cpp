#include "answers/mix/scale_mix.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/price_mix.h"
#include "answers/mix/tub_judgement.h"
#include "answers/shared/mix_amount.h"
#include "answers/shared/over_label.h"
#include "bait/free_offerings.h"
#include "bait/kitchen_rounding.h"
#include "bait/label.h"
#include "bait/pellets_alone.h"
#include "bait/uptake.h"
#include "bait/wetted_mix.h"
#include "quantities/fault.h"
#include "quantities/units.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

constexpr double rest_until = 0.9;

/// The mix wetted, and how it then sits: in the state wanted, or the usual one where it is too wet for that.
struct Tub {
    WettedMix wetted;
    WetPacking packing;
    Ratio wetness;
    MixState state;
    SpecificVolume volume;
};

Tub tub_of(const MixNumbers& numbers, Ratio wetness, MixState wanted, Ratio already_added) {
    Tub tub;
    tub.wetted = wet(numbers, wetness, already_added);
    tub.packing = pack(numbers, tub.wetted);
    tub.wetness = std::min<double>(tub.wetted.wetness, wettest);
    tub.state = can_be(wanted, tub.wetness) ? wanted : usual_state(tub.wetness);
    tub.volume = wet_volume(tub.packing, tub.state, tub.wetness);
    return tub;
}

/// The tub with water in it: wetted on to the feel, or as it stands, where that is right.
Tub tub_with_water(const MixNumbers& numbers, const std::vector<Feel>& feels, const WantedFeel& wanted, MixState state,
                   MixAnswer& answer) {
    const Ratio water_in = answer.water_already_in / answer.dry_mass;
    const TubJudgement judged = judge_tub(numbers, feels, wanted, answer.dry_mass, water_in);
    answer.right_as_it_stands = judged.needs == TubNeeds::nothing && judged.settled > 0;
    Tub tub = tub_of(numbers, answer.right_as_it_stands ? judged.settled : wanted.wetness, state, water_in);
    if (answer.right_as_it_stands) {
        tub.wetted.water = 0;
        tub.wetted.too_wet = false;
    }
    return tub;
}

bool goes_in_at_the_end(const SolidPart& part) {
    return part.prepare == Preparation::soaked || goes_in_last(part.ingredient.kind);
}

std::vector<PartAnswer> parts_of(const ResolvedMix& mix, Mass dry) {
    std::vector<PartAnswer> parts;
    parts.reserve(mix.solids.size());
    for (const SolidPart& solid : mix.solids) {
        PartAnswer part;
        part.name = solid.ingredient.name;
        part.prepare = solid.prepare;
        part.share = solid.share;
        part.mass = solid.share * dry;
        part.volume = part.mass / solid.ingredient.loose_density.value;
        part.free_offerings = free_offerings_in(solid.ingredient, part.mass);
        part.kitchen_mass = kitchen_mass(part.mass);
        part.goes_in_last = goes_in_at_the_end(solid);
        parts.push_back(std::move(part));
    }
    if (std::all_of(parts.begin(), parts.end(), [](const PartAnswer& part) { return part.goes_in_last; }))
        for (PartAnswer& part : parts) part.goes_in_last = false;  // there is nothing to stir them into
    return parts;
}

AdditiveAnswer additive_of(const Ingredient& ingredient, Mass mass, std::string rate) {
    AdditiveAnswer additive;
    additive.name = ingredient.name;
    additive.liquid = ingredient.kind == IngredientKind::liquid;
    additive.mass = mass;
    additive.volume = mass / (additive.liquid ? ingredient.density.value : ingredient.loose_density.value);
    if (additive.liquid) additive.wetting = additive.volume * ingredient.wetting.value;
    additive.rate = std::move(rate);
    return additive;
}

std::vector<AdditiveAnswer> additives_of(const ResolvedMix& mix, const WettedMix& wetted, Mass dry) {
    std::vector<AdditiveAnswer> additives;
    for (std::size_t i = 0; i < mix.liquids.size(); ++i)
        additives.push_back(additive_of(mix.liquids[i].ingredient, wetted.additives[i] * dry, {}));
    for (std::size_t i = 0; i < mix.doses.size(); ++i)
        additives.push_back(additive_of(mix.doses[i].ingredient, wetted.additives[mix.liquids.size() + i] * dry,
                                        dose_rate_text(mix.doses[i].rate)));
    return additives;
}

/// Of all doses of one additive together.
Mass mass_of_additive(const MixAnswer& answer, const std::string& additive) {
    Mass all;
    for (const AdditiveAnswer& one : answer.additives)
        if (one.name == additive) all += one.mass;
    return all;
}

/// Each additive, however it comes in, against its label on the whole mix.
void hold_against_labels(const ResolvedMix& mix, MixAnswer& answer) {
    Volume pellets;
    for (std::size_t i = 0; i < mix.solids.size(); ++i)
        if (mix.solids[i].ingredient.kind == IngredientKind::pellet) pellets += answer.parts[i].volume;
    const DoseGround ground{answer.dry_mass, answer.wet_mass, answer.water_to_add + answer.water_already_in, pellets};
    for (std::size_t i = 0; i < answer.additives.size(); ++i)
        answer.additives[i].of_label_max =
            share_of_label(additive_ingredient(mix, i), mass_of_additive(answer, answer.additives[i].name), ground);
}

void warn_of_labels(const ResolvedMix& mix, MixAnswer& answer) {
    for (std::size_t i = 0; i < answer.additives.size(); ++i) {
        const AdditiveAnswer& additive = answer.additives[i];
        const bool seen = std::any_of(answer.additives.begin(), answer.additives.begin() + static_cast<long>(i),
                                      [&](const AdditiveAnswer& before) { return before.name == additive.name; });
        if (!seen && additive.of_label_max.value_or(0.0) > 1 + 1e-9)
            answer.warnings.push_back(over_label(additive_ingredient(mix, i), mass_of_additive(answer, additive.name),
                                                 *additive.of_label_max));
    }
}

std::optional<PortionsAnswer> portions_of(const MixRequest& request, const MixAnswer& answer) {
    PortionsAnswer portions;
    if (const Balls* balls = std::get_if<Balls>(&request.target))
        portions = {balls->count, "ball", ball_volume(balls->diameter), balls->diameter, {}};
    else if (const Vessels* vessels = std::get_if<Vessels>(&request.target))
        portions = {vessels->count, vessels->called, vessels->each, {}, {}};
    else
        return std::nullopt;
    portions.count *= request.people;
    portions.mass_each = answer.wet_mass * (portions.each / answer.wet_volume);
    return portions;
}

/// What a cup holds where the mix is riddled in loose, against tapped down and level.
std::optional<Mass> riddled_into(const PortionsAnswer& portions, const Tub& tub) {
    if (portions.called != "cup" || !can_be(MixState::riddled, tub.wetness)) return std::nullopt;
    return portions.mass_each * (tub.volume / wet_volume(tub.packing, MixState::riddled, tub.wetness));
}

TubsAnswer tubs_of(const MixAnswer& answer) {
    constexpr Mass most_in_a_tub = 5.0 * kilogram;
    const double count = std::max(1.0, std::ceil(answer.wet_mass / most_in_a_tub - 1e-9));
    Mass stirred_dry;
    for (const PartAnswer& part : answer.parts)
        if (!part.goes_in_last) stirred_dry += part.mass;
    return {static_cast<int>(count), answer.wet_mass / count, stirred_dry / count, answer.water_to_add / count};
}

void warn_of_water(const WettedMix& wetted, Mass dry, MixAnswer& answer) {
    if (!(wetted.need.wetted_share > 0) && !answer.soaked_alone)
        answer.warnings.push_back({"takes-no-water", "nothing in this mix takes water, so none is added"});
    if (!wetted.too_wet) return;
    const double ratio = added_water_ratio(wetted.need.marks, answer.wetness);  // what the feel asks for
    if (ratio > 0) answer.dry_to_add = (wetted.wetting_present / ratio - wetted.need.wetted_share) * dry;
    answer.warnings.push_back({"too-wet",
                               "add no water but more of the dry mix: the liquids, films and water already in "
                               "are more than this feel takes",
                               true});
}

/// Soaked pellets have none of their own: what was asked for is told off.
WantedFeel soaked_feel(const MixRequest& request, MixState state, MixAnswer& answer) {
    if (request.already_added > Volume{})
        throw UsageError("unfit-flag", "pellets alone are soaked under water and drained, so none of it stays in a tub",
                         worded("leave --added out; how long they soak, and what they keep, is in the answer",
                                "leave the water poured in out"));
    if (request.feel || request.wetness)
        answer.warnings.push_back({"soaked-whatever-the-feel",
                                   "pellets alone are soaked, not wetted to a feel: leave them longer in the water "
                                   "to have them softer"});
    return {feel_of_pellets, wetness_of_pellets(state)};
}

}  // namespace

MixAnswer scale_before_prices(const ResolvedMix& mix, const std::vector<Feel>& feels, const MixRequest& request) {
    MixAnswer answer;
    answer.soaked_alone = is_soaked_alone(mix);
    WantedFeel feel = wanted_feel(feels, mix.feel, request.feel, request.wetness);
    const MixState state =
        answer.soaked_alone ? wanted_pellet_state(request) : wanted_state(request, feel.name, feel.wetness);
    if (answer.soaked_alone) feel = soaked_feel(request, state, answer);
    answer.recipe = mix.name;
    answer.feel = feel.name;
    answer.wetness = feel.wetness;
    answer.water_temperature = request.water_temperature;
    answer.people = request.people;

    const MixNumbers numbers = numbers_of(mix);
    Tub tub = tub_of(numbers, feel.wetness, state, 0.0);
    const MixAmount amount = wanted_amount(mix, request, {tub.wetted.wet_mass, tub.volume, tub.wetted.additives});
    answer.dry_mass = amount.dry;
    answer.limited_by = amount.limited_by;
    if (request.already_added > Volume{}) {
        answer.water_already_in = request.already_added * (1.0 * gram_per_millilitre);
        tub = tub_with_water(numbers, feels, feel, state, answer);
    }
    const WettedMix& wetted = tub.wetted;
    answer.state = tub.state;
    answer.wetness_in_tub = tub.wetness;
    answer.all_parts_take_water = wetted.need.wetted_share > 1 - 1e-9;
    answer.marks = wetted.need.marks;
    answer.dry_volume = answer.dry_mass * dry_volume(numbers);
    answer.water_to_add = wetted.water * answer.dry_mass;
    answer.kitchen_water = kitchen_water(answer.water_to_add);
    answer.rest = MixUptake(mix, request.water_temperature).time_to(rest_until);
    answer.wet_mass = wetted.wet_mass * answer.dry_mass;
    answer.wet_volume = tub.volume * answer.dry_mass;
    answer.saturation = saturation(tub.packing, tub.volume);
    answer.parts = parts_of(mix, answer.dry_mass);
    answer.additives = additives_of(mix, wetted, answer.dry_mass);
    answer.portions = portions_of(request, answer);
    if (answer.portions && !answer.soaked_alone) answer.portions->riddled_each = riddled_into(*answer.portions, tub);
    answer.tubs = tubs_of(answer);
    for (const PartAnswer& part : answer.parts) answer.free_offerings += part.free_offerings;
    warn_of_water(wetted, answer.dry_mass, answer);
    hold_against_labels(mix, answer);
    return answer;
}

void warn_and_price(const ResolvedMix& mix, const Currency* usual, MixAnswer& answer) {
    warn_of_labels(mix, answer);
    price_mix(mix, usual, answer);
}

MixAnswer scale_mix(const ResolvedMix& mix, const std::vector<Feel>& feels, const MixRequest& request) {
    MixAnswer answer = scale_before_prices(mix, feels, request);
    warn_and_price(mix, request.usual_currency, answer);
    return answer;
}

}  // namespace baitwright
