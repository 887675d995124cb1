#include "answers/mix/several_targets.h"

#include <algorithm>

#include "answers/mix/let_down.h"
#include "answers/mix/mix_doubt.h"
#include "answers/mix/scale_mix.h"
#include "quantities/fault.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr std::size_t most_targets = 20;

void check_several(const MixRequest& request) {
    if (request.several.size() > most_targets)
        throw UsageError("too-many", "a batch is for at most 20 kinds of cups, balls and feeders",
                         "put those of one size and feel together, as in --cups 6x250ml");
    if (request.already_added > Volume{})
        throw UsageError("unfit-flag", "with water in the tub already, one batch is not told for several targets",
                         "leave --added out, or ask for one target at a time");
}

/// The request as it would be for each target by itself.
std::vector<MixRequest> requests_alone(const MixRequest& request) {
    std::vector<MixRequest> alone;
    alone.reserve(request.several.size());
    for (const TargetAtFeel& target : request.several) {
        MixRequest one = request;
        one.several.clear();
        std::visit([&](const auto& of) { one.target = of; }, target.of);
        if (target.feel) one.feel = target.feel;
        alone.push_back(std::move(one));
    }
    return alone;
}

std::vector<MixAnswer> answers_alone(const ResolvedMix& mix, const std::vector<Feel>& feels,
                                     const std::vector<MixRequest>& requests) {
    std::vector<MixAnswer> alone;
    alone.reserve(requests.size());
    for (const MixRequest& request : requests) alone.push_back(scale_before_prices(mix, feels, request));
    return alone;
}

TargetAnswer target_of(const ResolvedMix& mix, const MixAnswer& alone, Ratio driest) {
    const LetDownShare down = let_down(mix, {alone.dry_mass, driest, alone.wetness});
    TargetAnswer target;
    target.portions = *alone.portions;
    target.feel = alone.feel;
    target.wetness = alone.wetness;
    target.state = alone.state;
    target.dry_mass = alone.dry_mass;
    target.water = alone.water_to_add;
    target.wet_mass = alone.wet_mass;
    target.wet_volume = alone.wet_volume;
    target.take = down.take;
    target.let_down_water = down.water;
    target.let_down_additives = down.additives;
    target.additives.reserve(alone.additives.size());
    for (const AdditiveAnswer& additive : alone.additives) target.additives.push_back(additive.mass);
    return target;
}

/// An additive is what all targets take of it together, and as near to its label as it comes in any of them.
void sum_additives(const std::vector<MixAnswer>& alone, MixAnswer& batch) {
    for (std::size_t i = 0; i < batch.additives.size(); ++i) {
        AdditiveAnswer& sum = batch.additives[i];
        sum.mass = sum.wetting = {};
        sum.volume = {};
        for (const MixAnswer& one : alone) {
            sum.mass += one.additives[i].mass;
            sum.volume += one.additives[i].volume;
            sum.wetting += one.additives[i].wetting;
            if (one.additives[i].of_label_max.value_or(0.0) > sum.of_label_max.value_or(0.0))
                sum.of_label_max = one.additives[i].of_label_max;
        }
    }
}

}  // namespace

MixAnswer scale_batch(const ResolvedMix& mix, const std::vector<Feel>& feels, const MixRequest& request) {
    if (request.several.empty()) return scale_mix(mix, feels, request);
    check_several(request);
    const std::vector<MixRequest> requests = requests_alone(request);
    const std::vector<MixAnswer> alone = answers_alone(mix, feels, requests);
    const auto driest = std::min_element(alone.begin(), alone.end(),
                                         [](const MixAnswer& a, const MixAnswer& b) { return a.wetness < b.wetness; });
    MixRequest whole = requests[static_cast<std::size_t>(driest - alone.begin())];
    Mass dry;
    for (const MixAnswer& single : alone) dry += single.dry_mass;
    whole.target = DryMass{dry};
    whole.state.reset();
    whole.people = 1;
    whole.spare = 0;
    MixAnswer batch = scale_before_prices(mix, feels, whole);
    batch.people = request.people;
    batch.targets.reserve(alone.size());
    for (const MixAnswer& single : alone) batch.targets.push_back(target_of(mix, single, batch.wetness));
    sum_additives(alone, batch);
    warn_and_price(mix, request.usual_currency, batch);
    return batch;
}

void doubt_targets(const ResolvedMix& mix, MixAnswer& answer, std::uint64_t seed) {
    for (TargetAnswer& target : answer.targets) {
        MixAnswer alone;
        alone.wetness = target.wetness;
        alone.state = target.state;
        alone.dry_mass = target.dry_mass;
        alone.portions = target.portions;
        const MixDoubt doubt = doubt_of(mix, alone, seed);
        target.water_range = doubt.water;
        target.count_range = *doubt.portions;
        if (target.let_down_water > Mass{})
            target.let_down_range = let_down_range(mix, {target.dry_mass, answer.wetness, target.wetness}, seed);
    }
}

}  // namespace baitwright
