#include "answers/drop/drop_feed.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "answers/drop/drop_sketch.h"
#include "answers/shared/check_temperature.h"
#include "answers/shared/mix_amount.h"
#include "answers/shared/wanted_feel.h"
#include "bait/caution.h"
#include "bait/free_offerings.h"
#include "bait/resolve_mix.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"
#include "quantities/fault.h"

namespace baitwright {

namespace {

constexpr double runs_back = -0.3;  // the bottom of still water under a wind, of the top's speed. Default, from memory

void check_request(const DropRequest& r) {
    const auto refuse = [](const char* message, const char* hint) { throw UsageError("out-of-range", message, hint); };
    check_water_temperature(r.water);
    if (!(r.depth >= 10.0 * centimetre && r.depth <= 100.0 * metre))
        refuse("the depth must be from 10 cm to 100 m", "for example --depth 2.5m");
    const auto flood = [](Speed speed) { return !(std::abs(speed.si()) <= 1.5); };
    if (flood(r.tow) || flood(r.tow_bottom.value_or(Speed{})))
        refuse("a tow of more than 1.5 m/s is a flood: nobody feeds in it", "for example --tow 2cm/s");
}

/// What the forms have in common: their volume and how the mix sits in them.
struct Portion {
    std::string words;
    Volume volume;
    MixState state;
};

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

Ratio binder_of(const ResolvedMix& mix, const WettedMix& wetted) {
    std::vector<BinderShare> parts;
    for (const SolidPart& part : mix.solids) parts.push_back({part.share, part.ingredient.binder.value});
    for (std::size_t i = 0; i < wetted.additives.size(); ++i)
        parts.push_back({wetted.additives[i], additive_ingredient(mix, i).binder.value});
    return binder_sum(parts);
}

DropSetup setup_of(const ResolvedMix& mix, const Portion& portion, const DropRequest& request, Ratio wetness,
                   DropAnswer& answer) {
    const MixNumbers numbers = numbers_of(mix);
    const WettedMix wetted = wet(numbers, wetness);
    const WetPacking packing = pack(numbers, wetted);
    const StillWater water(request.water);
    const SpecificVolume volume = wet_volume(packing, portion.state, wetness);
    DropSetup setup{feed_in_water(mix, numbers, wetted, water),
                    portion.volume / volume,
                    {},
                    wetness,
                    binder_of(mix, wetted),
                    water,
                    {request.tow, request.tow_bottom.value_or(runs_back * request.tow), request.depth},
                    &request};
    if (request.own.cup_weighs) setup.dry = *request.own.cup_weighs / wetted.wet_mass;
    setup.body.volume = portion.volume;
    setup.body.mass = setup.dry * wetted.wet_mass;
    setup.body.under_water = setup.dry * setup.feed.weight;
    setup.body.air = std::max(Volume{}, portion.volume - setup.dry * (packing.solids + packing.between));
    answer.wet_mass = setup.body.mass;
    answer.dry_mass = setup.dry;
    answer.volume = portion.volume;
    return setup;
}

/// The look that a person had stretches every patch.
double spread_of_own_look(const DropSetup& setup, const DropRequest& request) {
    if (!request.own.carpet) return 1;
    const DropOutcome plain = follow(setup, {});
    if (!(plain.sketch.width.most > Length{})) return 1;
    return *request.own.carpet / plain.sketch.width.most;
}

void add_classes(const ResolvedMix& mix, const DropSetup& setup, const DropOutcome& outcome, DropAnswer& answer) {
    for (std::size_t i = 0; i < setup.feed.grains.size(); ++i) {
        const GrainClass& g = setup.feed.grains[i];
        const GrainsFate& fate = outcome.fates[i];
        answer.classes.push_back({mix.solids[g.solid].ingredient.name, g.size, g.settling, g.share, fate.lands,
                                  fate.drift, fate.spread, fate.sinks});
    }
}

void add_parts(const ResolvedMix& mix, const DropSetup& setup, const DropOutcome& outcome, DropAnswer& answer) {
    for (std::size_t solid = 0; solid < mix.solids.size(); ++solid) {
        const SolidPart& part = mix.solids[solid];
        DropPart own{part.ingredient.name, part.share, std::nullopt, {}, {}, part.ingredient.fines.value};
        std::vector<GrainsFate> fates;
        std::vector<double> shares;
        std::vector<std::pair<double, double>> lands, drifts;
        for (std::size_t i = 0; i < setup.feed.grains.size(); ++i) {
            if (setup.feed.grains[i].solid != solid || !outcome.fates[i].sinks) continue;
            fates.push_back(outcome.fates[i]);
            shares.push_back(setup.feed.grains[i].share);
            lands.emplace_back(outcome.fates[i].lands.si(), shares.back());
            drifts.emplace_back(outcome.fates[i].drift.si(), shares.back());
        }
        if (!lands.empty()) {
            own.landed = Time::from_si(point_of(lands, 0.5));
            own.drift = Length::from_si(point_of(drifts, 0.5));
            own.width = width_of(fates, shares, 0.9);
        }
        answer.parts.push_back(std::move(own));
    }
}

/// Draws of what is not known, for the ranges beside the headlines.
void add_ranges(const DropSetup& setup, double own_spread, DropAnswer& answer) {
    constexpr std::size_t points = 64;
    const double at_95_percent = normal_quantile(0.95);
    const auto sigma = [&](double factor) { return std::log(factor) / at_95_percent; };
    QuasiRandomNormals normals(5, 1);
    std::vector<double> z(5), depth, width, length, drift, half, most, hanging;
    for (std::size_t i = 0; i < points; ++i) {
        normals.next(z);
        DropFactors factors{std::exp(sigma(2.5) * z[0]), std::exp(sigma(1.5) * z[1]), std::exp(sigma(1.5) * z[2]),
                            own_spread};
        factors.drag = std::exp(sigma(1.5) * z[4]);
        if (!setup.request->own.carpet) factors.spread = std::exp(sigma(1.6) * z[3]);
        const DropSketch sketch = follow(setup, factors).sketch;
        depth.push_back(sketch.breaks_depth.si());
        width.push_back(sketch.width.most.si());
        length.push_back(sketch.length.most.si());
        drift.push_back(sketch.drift.p50.si());
        half.push_back(sketch.landed.p50.si());
        most.push_back(sketch.landed.p90.si());
        hanging.push_back(sketch.hanging[2]);
    }
    const auto range = [](std::vector<double>& values, auto unit) {
        return Range<decltype(1.0 * unit)>{quantile_in_place(values, 0.05) * unit,
                                           quantile_in_place(values, 0.5) * unit,
                                           quantile_in_place(values, 0.95) * unit};
    };
    answer.breaks_depth_range = range(depth, metre);
    answer.width_range = range(width, metre);
    answer.length_range = range(length, metre);
    answer.drift_range = range(drift, metre);
    answer.landed_half_range = range(half, second);
    answer.landed_most_range = range(most, second);
    answer.hanging_10_range = {quantile_in_place(hanging, 0.05), quantile_in_place(hanging, 0.5),
                               quantile_in_place(hanging, 0.95)};
}

HookAnswer hook_of(const Shelf& shelf, const std::string& name, const DropSetup& setup, const DropAnswer& answer) {
    const Ingredient in = shelf.ingredient(name);
    if (in.kind != IngredientKind::expander && in.kind != IngredientKind::pellet)
        throw UsageError("not-a-pellet", "'" + in.name + "' is not a hook pellet",
                         "see them with: baitwright ingredient list --kind expander");
    Density density = in.envelope_density.value;
    if (in.kind == IngredientKind::expander) density += in.porosity.value * setup.water.density;
    const Speed speed = terminal_speed(volume_diameter(in), density, setup.water, pellet_sphericity);
    if (!(speed > Speed{})) throw UsageError("floats", "'" + in.name + "' floats", "pump it, or choose another");
    HookAnswer hook{in.name, setup.tow.depth / speed};
    hook.with_the_feed = hook.lands >= answer.landed.p10 && hook.lands <= answer.landed.p90;
    return hook;
}

void name_own(const DropRequest& request, DropAnswer& answer) {
    if (request.own.holds) answer.own.emplace_back("hold time");
    if (request.own.breaks_at) answer.own.emplace_back("breaking depth");
    if (request.own.carpet) answer.own.emplace_back("carpet");
    if (request.own.cup_weighs) answer.own.emplace_back("packing");
}

void warn_of_floating(const ResolvedMix& mix, const DropSetup& setup, DropAnswer& answer) {
    std::string lighter;
    for (const SolidPart& part : mix.solids)
        if (part.ingredient.skeleton_density.value < setup.water.density)
            lighter += (lighter.empty() ? "" : ", ") + part.ingredient.name;
    answer.warnings.push_back(
        {"floats",
         "it floats, even without air in it: " +
             (lighter.empty() ? std::string("it weighs nothing under water") : lighter + " is lighter than water"),
         true});
}

void warn_of_form(const DropRequest& request, const DropSketch& sketch, DropAnswer& answer) {
    const bool ball = std::holds_alternative<DroppedBall>(request.form);
    if (ball && !can_be(MixState::squeezed, answer.wetness)) {
        const bool dry = answer.wetness < 1;
        answer.warnings.push_back({"no-ball", std::string("at this feel the mix is too ") + (dry ? "dry" : "wet") +
                                                  " to be a ball: it goes in as a cupful" +
                                                  (dry ? " and breaks at the surface" : "")});
    } else if (ball && request.thrown && sketch.breaks == Breaks::surface) {
        answer.warnings.push_back({"bursts", "thrown, a ball as loose as this bursts on the surface"});
    }
}

void place_angler(DropAnswer& answer) {
    answer.feed_up_tow = answer.drift.p50;
    // Past a small patch lies nothing: no further from its edge than it reaches from its middle.
    const Length reach = 0.5 * answer.length.most;
    answer.start_beyond = reach + std::min(half_section, reach);
}

}  // namespace

DropAnswer drop_feed(const Shelf& shelf, const Recipe& recipe, const DropRequest& request) {
    check_request(request);
    const ResolvedMix mix = resolve(recipe, shelf);
    const WantedFeel feel = wanted_feel(shelf.feels(), mix.feel, request.feel, request.wetness);
    const Portion portion = std::visit(PortionOf{feel.wetness}, request.form);
    DropAnswer answer;
    answer.recipe = mix.name;
    answer.feel = feel.name;
    answer.form = portion.words;
    answer.wetness = feel.wetness;
    answer.state = portion.state;
    answer.depth = request.depth;
    const DropSetup setup = setup_of(mix, portion, request, feel.wetness, answer);
    answer.tow = setup.tow.top;
    answer.tow_bottom = setup.tow.bottom;
    name_own(request, answer);
    std::vector<std::string> caution_words;
    for (const SolidPart& part : mix.solids) {
        answer.free_offerings += free_offerings_in(part.ingredient, part.share * setup.dry);
        caution_words.insert(caution_words.end(), part.ingredient.cautions.begin(), part.ingredient.cautions.end());
    }
    answer.cautions = caution_sentences(caution_words);
    const double own_spread = spread_of_own_look(setup, request);
    const DropOutcome outcome = follow(setup, {1, 1, 1, own_spread});
    if (outcome.floats) {
        warn_of_floating(mix, setup, answer);
        return answer;
    }
    static_cast<DropSketch&>(answer) = outcome.sketch;
    answer.fall = fall_to(setup, answer.breaks_depth);
    add_classes(mix, setup, outcome, answer);
    add_parts(mix, setup, outcome, answer);
    add_ranges(setup, own_spread, answer);
    const Area patch = std::numbers::pi / 4 * answer.length.most * answer.width.most;
    if (patch > Area{}) answer.in_hand = 0.9 * answer.free_offerings * (hand_patch / patch);
    if (request.hook) answer.hook = hook_of(shelf, *request.hook, setup, answer);
    warn_of_form(request, outcome.sketch, answer);
    place_angler(answer);
    return answer;
}

void refuse_no_ball(const DropRequest& request, const DropAnswer& answer) {
    if (!std::holds_alternative<DroppedBall>(request.form) || answer.state == MixState::squeezed) return;
    throw UsageError(
        "unfit-state",
        "at the feel '" + answer.feel + "' the mix is too " + (answer.wetness < 1 ? "dry" : "wet") + " to be a ball",
        "choose another feel, such as --feel firm; or drop a cup: --cup 250ml");
}

}  // namespace baitwright
