#include "answers/drop/drop_setup.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "answers/shared/mix_amount.h"
#include "bait/pellets_alone.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr Speed flows = 10.0 * centimetre_per_second;  // a wind moves the top of a pit by less. Default, from memory

struct PortionOf {
    Ratio wetness;
    Portion operator()(const DroppedCup& cup) const {
        return {fmt::format("a level cup of {:.0f} ml", cup.volume.in(millilitre)), checked(cup.volume),
                MixState::cupped};
    }
    Portion operator()(const DroppedBall& ball) const {
        const bool holds = can_be(MixState::squeezed, wetness);
        return {fmt::format("a ball of {:.0f} mm", ball.diameter.in(millimetre)), checked(ball_volume(ball.diameter)),
                holds ? MixState::squeezed : MixState::cupped};
    }
    Portion operator()(const DroppedFeeder& feeder) const {
        return {fmt::format("a feeder of {:.0f} ml", feeder.volume.in(millilitre)), checked(feeder.volume),
                MixState::cupped};
    }
    Portion operator()(const DroppedLoose& loose) const {
        return {fmt::format("a loose handful of {:.0f} ml", loose.volume.in(millilitre)), checked(loose.volume),
                usual_state(wetness)};
    }

    static Volume checked(Volume volume) {
        if (!(volume >= 0.5 * millilitre && volume <= 10.0 * litre))
            throw UsageError("out-of-range", "a portion must be from 0.5 ml to 10 l",
                             "for example --cup 250ml or --ball 55mm");
        return volume;
    }
};

/// As told, top and bottom; else by the kind of water.
Tow tow_of(const DropRequest& request) {
    if (request.tow_bottom) return {request.tow, *request.tow_bottom, request.depth, TowProfile::straight};
    const bool river = request.kind ? *request.kind == WaterKind::river : std::abs(request.tow.si()) >= flows.si();
    return {request.tow, {}, request.depth, river ? TowProfile::river : TowProfile::lake};
}

Ratio binder_of(const ResolvedMix& mix, const WettedMix& wetted) {
    std::vector<BinderShare> parts;
    for (const SolidPart& part : mix.solids) parts.push_back({part.share, part.ingredient.binder.value});
    for (std::size_t i = 0; i < wetted.additives.size(); ++i)
        parts.push_back({wetted.additives[i], additive_ingredient(mix, i).binder.value});
    return binder_sum(parts);
}

/// What is pressed into a feeder holds as a ball does.
Hold how_it_holds(const DropForm& form, bool squeezed) {
    return squeezed || std::holds_alternative<DroppedFeeder>(form) ? Hold::squeezed : Hold::heaped;
}

}  // namespace

Portion portion_of(const DropForm& form, Ratio wetness) {
    return std::visit(PortionOf{wetness}, form);
}

Portion pellet_portion(const DropForm& form) {
    const bool pressed = std::holds_alternative<DroppedBall>(form) || std::holds_alternative<DroppedFeeder>(form);
    Portion portion = portion_of(form, wetness_of_pellets(pressed ? MixState::squeezed : MixState::riddled));
    if (pressed) portion.state = MixState::squeezed;
    return portion;
}

DropSetup setup_of(const ResolvedMix& mix, const Portion& portion, const DropRequest& request, Ratio wetness,
                   DropAnswer& answer) {
    const MixNumbers numbers = numbers_of(mix);
    const WettedMix wetted = wet(numbers, wetness);
    const WetPacking packing = pack(numbers, wetted);
    const StillWater water(request.water);
    const SpecificVolume volume = wet_volume(packing, portion.state, wetness);
    const bool squeezed = portion.state == MixState::squeezed;
    DropSetup setup{feed_in_water(mix, numbers, wetted, squeezed, request.water, water),
                    portion.volume / volume,
                    {},
                    how_it_holds(request.form, squeezed),
                    wetness,
                    binder_of(mix, wetted),
                    water,
                    tow_of(request),
                    &request};
    if (request.own.cup_weighs && std::holds_alternative<DroppedCup>(request.form))
        setup.dry = *request.own.cup_weighs / wetted.wet_mass;
    if (mix.learnt_mix) setup.learnt = *mix.learnt_mix;
    if (setup.learnt.hold) setup.usual.hold = setup.usual.breaking = std::exp(setup.learnt.hold->mean);
    if (setup.learnt.carpet && !request.own.carpet) setup.usual.spread = std::exp(setup.learnt.carpet->mean);
    setup.body.volume = portion.volume;
    setup.body.mass = setup.dry * wetted.wet_mass;
    setup.body.under_water = setup.dry * setup.feed.weight;
    setup.body.air =
        std::max(Volume{}, portion.volume - setup.dry * (solids_in(packing, portion.state) + packing.between));
    answer.wet_mass = setup.body.mass;
    answer.dry_mass = setup.dry;
    answer.volume = portion.volume;
    return setup;
}

}  // namespace baitwright
