#include "answers/drop/drop_feed.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "answers/drop/drop_setup.h"
#include "answers/drop/drop_sketch.h"
#include "answers/drop/own_looks.h"
#include "answers/shared/check_temperature.h"
#include "answers/shared/wanted_feel.h"
#include "bait/caution.h"
#include "bait/free_offerings.h"
#include "bait/ingredient_cautions.h"
#include "bait/pellets_alone.h"
#include "bait/resolve_mix.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/worded.h"

namespace baitwright {

namespace {

void check_request(const DropRequest& r) {
    const auto refuse = [](const char* message, const char* hint) { throw UsageError("out-of-range", message, hint); };
    check_water_temperature(r.water);
    if (!(r.depth >= 10.0 * centimetre && r.depth <= 100.0 * metre))
        refuse("the depth must be from 10 cm to 100 m", "for example --depth 2.5m");
    const auto flood = [](Speed speed) { return !(std::abs(speed.si()) <= 1.5); };
    if (flood(r.tow) || flood(r.tow_bottom.value_or(Speed{})))
        refuse("a tow of more than 1.5 m/s is a flood: nobody feeds in it", "for example --tow 2cm/s");
    if (r.kind == WaterKind::river && r.tow_bottom && r.tow_bottom->si() * r.tow.si() < 0)
        refuse("a river does not run backwards at the bed", "for example --tow 20cm/s --tow-bottom 5cm/s");
}

/// The look that a person had stretches every patch; else what was learnt does.
double spread_of_own_look(const DropSetup& setup, const DropRequest& request) {
    if (!request.own.carpet) return setup.usual.spread;
    const DropOutcome plain = follow(setup, setup.usual);
    if (!(plain.sketch.width.most > Length{})) return 1;
    return *request.own.carpet / plain.sketch.width.most;
}

DropFactors factors_of(const DropSetup& setup, double spread) {
    DropFactors factors = setup.usual;
    factors.spread = spread;
    return factors;
}

/// One line for what came down singly of each class of grains, and one for what came in lumps: the means of its ways.
void add_classes(const ResolvedMix& mix, const DropSetup& setup, const DropOutcome& outcome, DropAnswer& answer) {
    struct Sum {
        double share = 0, lands = 0, drift = 0, square = 0;
        bool sinks = false;
    };
    std::vector<Sum> sums(2 * setup.feed.grains.size());
    for (const Settled& s : outcome.settled) {
        Sum& sum = sums[2 * s.grain + (s.in_lump ? 1 : 0)];
        sum.share += s.share;
        sum.sinks = s.fate.sinks;
        sum.lands += s.share * s.fate.lands.si();
        sum.drift += s.share * s.fate.drift.si();
        sum.square += s.share * s.fate.spread.si() * s.fate.spread.si();
    }
    for (std::size_t i = 0; i < sums.size(); ++i) {
        const Sum& sum = sums[i];
        if (!(sum.share > 0)) continue;
        const GrainClass& g = setup.feed.grains[i / 2];
        answer.classes.push_back({mix.solids[g.solid].ingredient.name, g.size, g.settling, sum.share,
                                  Time::from_si(sum.lands / sum.share), Length::from_si(sum.drift / sum.share),
                                  Length::from_si(std::sqrt(sum.square / sum.share)), sum.sinks, i % 2 == 1});
    }
}

void add_parts(const ResolvedMix& mix, const DropSetup& setup, const DropOutcome& outcome, DropAnswer& answer) {
    for (std::size_t solid = 0; solid < mix.solids.size(); ++solid) {
        const SolidPart& part = mix.solids[solid];
        DropPart own{part.ingredient.name, part.share, std::nullopt, {}, {}, part.ingredient.fines.value, {}};
        std::vector<EvenPatch> patches;
        std::vector<std::pair<double, double>> lands, drifts;
        for (const Settled& s : outcome.settled) {
            const GrainClass& grains = setup.feed.grains[s.grain];
            if (grains.solid != solid || !s.fate.sinks) continue;
            if (grains.afloat) own.floats = grains.afloat->until;
            patches.push_back({s.fate.spread, s.share});
            lands.emplace_back(s.fate.lands.si(), s.share);
            drifts.emplace_back(s.fate.drift.si(), s.share);
        }
        if (!lands.empty()) {
            own.landed = Time::from_si(point_of(lands, 0.5));
            own.drift = Length::from_si(point_of(drifts, 0.5));
            own.width = width_of(patches, 0.9);
        }
        answer.parts.push_back(std::move(own));
    }
}

/// Draws of what is not known, for the ranges beside the headlines.
void add_ranges(const DropSetup& setup, double own_spread, DropAnswer& answer) {
    constexpr std::size_t points = 64;
    const double at_95_percent = normal_quantile(0.95);
    const auto sigma = [&](double factor) { return std::log(factor) / at_95_percent; };
    const auto surer = [](double usual, const std::optional<LearntFactor>& learnt) {
        return learnt ? std::min(usual, learnt->sigma) : usual;
    };
    const double hold = surer(sigma(2.5), setup.learnt.hold), breaking = surer(sigma(1.3), setup.learnt.hold),
                 spread = surer(sigma(1.6), setup.learnt.carpet);
    QuasiRandomNormals normals(5, 1);
    std::vector<double> z(5), depth, width, length, drift, half, most, hanging;
    for (std::size_t i = 0; i < points; ++i) {
        normals.next(z);
        DropFactors factors{setup.usual.hold * std::exp(hold * z[0]), setup.usual.breaking * std::exp(breaking * z[1]),
                            std::exp(sigma(1.5) * z[2]), own_spread};
        factors.drag = std::exp(sigma(1.5) * z[4]);
        if (!setup.request->own.carpet) factors.spread = own_spread * std::exp(spread * z[3]);
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
        throw UsageError(
            "not-a-pellet", "'" + in.name + "' is not a hook pellet",
            worded("see them with: baitwright ingredient list --kind expander", "choose it from the list"));
    Density density = in.envelope_density.value;
    if (in.kind == IngredientKind::expander) density += in.porosity.value * setup.water.density;
    const Speed speed = terminal_speed(volume_diameter(in), density, setup.water, pellet_sphericity);
    if (!(speed > Speed{})) throw UsageError("floats", "'" + in.name + "' floats", "pump it, or choose another");
    HookAnswer hook{in.name, setup.tow.depth / speed};
    hook.with_the_feed = hook.lands >= answer.landed.p10 && hook.lands <= answer.landed.p90;
    return hook;
}

/// What it takes from the log, where nothing seen just now takes its place; said once.
void tell_learnt_of_drop(const ResolvedMix& mix, const DropRequest& request, DropAnswer& answer) {
    if (answer.state == MixState::cupped && !request.own.cup_weighs) answer.learnt.add_cup(mix);
    const auto seen = [](const std::optional<LearntFactor>& factor) { return factor ? factor->times : 0; };
    if (mix.learnt_mix && !request.own.holds && !request.own.breaks_at)
        answer.learnt.holds_seen = seen(mix.learnt_mix->hold);
    if (mix.learnt_mix && !request.own.carpet) answer.learnt.carpets_seen = seen(mix.learnt_mix->carpet);
    if (auto told = answer.learnt.told()) answer.warnings.push_back(*std::move(told));
}

void warn_of_floating(const ResolvedMix& mix, const DropSetup& setup, DropAnswer& answer) {
    std::string lighter;
    for (std::size_t solid = 0; solid < mix.solids.size(); ++solid) {
        const auto floats = [&](const GrainClass& g) { return g.solid == solid && g.settling < Speed{}; };
        if (std::any_of(setup.feed.grains.begin(), setup.feed.grains.end(), floats))
            lighter += (lighter.empty() ? "" : ", ") + mix.solids[solid].ingredient.name;
    }
    answer.warnings.push_back({"floats",
                               "it floats for good: " + (lighter.empty() ? std::string("it weighs nothing under water")
                                                                         : lighter + " is lighter than water"),
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

/// Pellets alone, but for those that nothing is to bind: they go in as they are bought.
bool is_soaked(const ResolvedMix& mix) {
    return is_pellets_alone(mix) && can_be(MixState::squeezed, mix.feel.aim);
}

/// Live and cooked feed alone: nothing wets it, and nothing binds it.
bool goes_in_as_it_is(const ResolvedMix& mix) {
    return std::none_of(mix.solids.begin(), mix.solids.end(),
                        [](const SolidPart& part) { return takes_water(part.ingredient.kind); });
}

void place_angler(DropAnswer& answer) {
    answer.feed_up_tow = answer.drift.p50;
    // Past a small patch lies nothing: no further from its edge than it reaches from its middle. Of a trail, the thick
    // end counts.
    const Length reach = std::min(0.5 * answer.length.most, answer.length.half);
    answer.start_beyond = reach + std::min(half_section, reach);
}

/// What a fish finds of its parts, and what a hand should know of them.
void add_what_is_in_it(const ResolvedMix& mix, const DropSetup& setup, DropAnswer& answer) {
    std::vector<std::string> words;
    for (const SolidPart& part : mix.solids) {
        answer.free_offerings += free_offerings_in(part.ingredient, part.share * setup.dry);
        add_caution_words(part.ingredient, words);
    }
    answer.cautions = caution_sentences(words);
}

}  // namespace

DropAnswer drop_feed(const Shelf& shelf, const Recipe& recipe, const DropRequest& request) {
    check_request(request);
    ResolvedMix mix = resolve(recipe, shelf);
    WantedFeel feel = wanted_feel(shelf.feels(), mix.feel, request.feel, request.wetness);
    if (goes_in_as_it_is(mix)) feel = {feel_as_it_is, shelf.feels().front().aim};
    const bool soaked = is_soaked(mix);
    if (soaked) soak_pellets_alone(mix);
    const Portion portion = soaked ? pellet_portion(request.form) : portion_of(request.form, feel.wetness);
    if (soaked) feel = {feel_of_pellets, wetness_of_pellets(portion.state)};
    DropAnswer answer;
    answer.recipe = mix.name;
    answer.feel = feel.name;
    answer.form = portion.words;
    answer.wetness = feel.wetness;
    answer.state = portion.state;
    answer.depth = request.depth;
    const DropSetup setup = setup_of(mix, portion, request, feel.wetness, answer);
    answer.tow = setup.tow.top;
    answer.tow_bottom = setup.tow.at(setup.tow.depth);
    answer.water = setup.tow.profile;
    tell_learnt_of_drop(mix, request, answer);
    add_what_is_in_it(mix, setup, answer);
    const double own_spread = spread_of_own_look(setup, request);
    const DropOutcome outcome = follow(setup, factors_of(setup, own_spread));
    if (outcome.floats) {
        name_looks(setup, false, answer);
        warn_of_floating(mix, setup, answer);
        return answer;
    }
    static_cast<DropSketch&>(answer) = outcome.sketch;
    name_looks(setup, true, answer);
    if (!(setup.body.under_water > Mass{}) && !std::holds_alternative<DroppedFeeder>(request.form))
        answer.raft = outcome.raft;
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
    if (answer.feel == feel_as_it_is)
        throw UsageError("unfit-state", in_quotes(answer.recipe) + " is not wetted, and makes no ball by itself",
                         "drop a cup of it: --cup 250ml");
    throw UsageError(
        "unfit-state",
        "at the feel '" + answer.feel + "' the mix is too " + (answer.wetness < 1 ? "dry" : "wet") + " to be a ball",
        "choose another feel, such as --feel firm; or drop a cup: --cup 250ml");
}

}  // namespace baitwright
