#include "answers/shared/mix_amount.h"

#include <map>
#include <numbers>

#include "bait/amount.h"
#include "quantities/fault.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr Mass most_dry = 10000.0 * kilogram;
constexpr Mass least_dry = 0.5 * gram;

MixState state_meant(const MixRequest& request, Ratio wetness) {
    if (std::holds_alternative<Balls>(request.target)) return MixState::squeezed;
    if (std::holds_alternative<Vessels>(request.target)) return MixState::cupped;
    return usual_state(wetness);
}

std::string allowed_states(Ratio wetness) {
    std::string allowed;
    for (const MixState state : {MixState::riddled, MixState::cupped, MixState::squeezed})
        if (can_be(state, wetness)) allowed += (allowed.empty() ? "" : ", ") + std::string(name_of(state));
    return allowed;
}

/// What the mix takes of an ingredient per gram dry, as a solid part in whatever state, a liquid part or a dose.
struct Taken {
    const Ingredient* ingredient = nullptr;
    double per_dry = 0;
};

Taken taken_of(const ResolvedMix& mix, const std::vector<Ratio>& additives, const std::string& name) {
    Taken taken;
    const std::string wanted = folded_name(name);
    for (const SolidPart& part : mix.solids)
        if (folded_name(part.ingredient.name) == wanted) taken = {&part.ingredient, taken.per_dry + part.share};
    for (std::size_t i = 0; i < additives.size(); ++i) {
        const Ingredient& one = additive_ingredient(mix, i);
        if (folded_name(one.name) == wanted) taken = {&one, taken.per_dry + additives[i]};
    }
    return taken;
}

/// The ingredient of the mix that a person means. Throws UsageError.
std::string name_in_mix(const ResolvedMix& mix, const std::string& said) {
    std::vector<std::string> names;
    for (const SolidPart& part : mix.solids) names.push_back(part.ingredient.name);
    for (const LiquidPart& part : mix.liquids) names.push_back(part.ingredient.name);
    for (const ResolvedDose& dose : mix.doses) names.push_back(dose.ingredient.name);
    if (const auto name = said_name(said, names).name) return *name;
    throw UsageError(fault_of_name(
        said, names,
        {"not-in-mix", "'" + mix.name + "' holds no '" + said + "'", "it is made of " + joined(names, ", ")}));
}

MixAmount most_from(const ResolvedMix& mix, const std::vector<Ratio>& additives, const OnHand& on_hand) {
    std::map<std::string, Mass> held;  // what is named twice is there twice
    for (const OnHand::Item& item : on_hand.items) {
        const Taken taken = taken_of(mix, additives, name_in_mix(mix, item.of));
        held[taken.ingredient->name] += mass_of_amount(item.amount, *taken.ingredient);
    }
    MixAmount most{2 * most_dry, {}};
    for (const auto& [name, mass] : held) {
        const double per_dry = taken_of(mix, additives, name).per_dry;
        if (!(per_dry > 0)) continue;  // a dose by the litre of a water that is not added
        const Mass allows = mass / per_dry;
        if (allows < most.dry) most = {allows, name};
    }
    return most;
}

Mass as_written(const ResolvedMix& mix) {
    if (mix.as_written > Mass{}) return mix.as_written;
    throw UsageError("no-target", "'" + mix.name + "' is written in shares, so it has no size of its own",
                     "say how much, for example --dry-mass 1kg or --wet-volume 3l");
}

void refuse_two_states(const MixRequest& request, MixState meant) {
    const bool set_by_target =
        std::holds_alternative<Balls>(request.target) || std::holds_alternative<Vessels>(request.target);
    if (request.state && set_by_target && *request.state != meant)
        throw UsageError("two-states", "this target is always " + std::string(name_of(meant)), "leave --state out");
}

struct DryMassFor {
    const ResolvedMix& mix;
    const PerDry& per_dry;

    MixAmount operator()(const AsWritten&) const { return {as_written(mix), {}}; }
    MixAmount operator()(const WetVolume& wet) const { return {wet.volume / per_dry.wet_volume, {}}; }
    MixAmount operator()(const WetMass& wet) const { return {wet.mass / per_dry.wet_mass, {}}; }
    MixAmount operator()(const DryMass& dry) const { return {dry.mass, {}}; }
    MixAmount operator()(const Vessels& vessels) const {
        return {vessels.count * vessels.each / per_dry.wet_volume, {}};
    }
    MixAmount operator()(const Balls& balls) const {
        return {balls.count * ball_volume(balls.diameter) / per_dry.wet_volume, {}};
    }
    MixAmount operator()(const OnHand& on_hand) const { return most_from(mix, per_dry.additives, on_hand); }
};

}  // namespace

Volume ball_volume(Length diameter) {
    return std::numbers::pi / 6 * diameter * diameter * diameter;
}

MixState wanted_state(const MixRequest& request, const std::string& feel, Ratio wetness) {
    const MixState meant = state_meant(request, wetness);
    refuse_two_states(request, meant);
    const MixState state = request.state.value_or(meant);
    if (can_be(state, wetness)) return state;
    const char* because = state == MixState::squeezed && wetness < 1 ? "too dry" : "too wet";
    throw UsageError("unfit-state",
                     "at the feel '" + feel + "' the mix is " + because + " to be " + std::string(name_of(state)),
                     "it can be " + allowed_states(wetness) + "; or choose another feel, such as firm");
}

MixState wanted_pellet_state(const MixRequest& request) {
    MixState meant = MixState::riddled;
    if (std::holds_alternative<Balls>(request.target)) meant = MixState::squeezed;
    if (const Vessels* vessels = std::get_if<Vessels>(&request.target))
        meant = vessels->called == "feeder" ? MixState::squeezed : MixState::cupped;
    refuse_two_states(request, meant);
    return request.state.value_or(meant);
}

MixAmount wanted_amount(const ResolvedMix& mix, const MixRequest& request, const PerDry& per_dry) {
    if (request.people < 1 || request.people > 1000)
        throw UsageError("out-of-range", "the number of people must be from 1 to 1000", "for example --people 4");
    if (!(request.spare >= 0 && request.spare <= 5))
        throw UsageError("out-of-range", "the spare must be from 0 to 500 %", "for example --spare 10%");
    if (!(request.already_added >= Volume{} && request.already_added <= 20000.0 * litre))
        throw UsageError("out-of-range", "the water already added must not be below zero or above 20,000 l",
                         "for example --added 300ml");
    MixAmount amount = std::visit(DryMassFor{mix, per_dry}, request.target);
    const bool fixed_stock = std::holds_alternative<OnHand>(request.target);
    if (fixed_stock && request.spare > 0)
        throw UsageError("unfit-flag", "what is on hand leaves nothing to spare", "leave --spare out");
    if (!fixed_stock) amount.dry *= request.people * (1 + request.spare);
    if (!is_finite(amount.dry) || !(amount.dry > Mass{}))
        throw UsageError("out-of-range", "the amount asked for must be above zero", "for example --wet-volume 3l");
    if (amount.dry < least_dry)
        throw UsageError("out-of-range", "that comes to less than half a gram of dry mix, too little to weigh",
                         "check the unit: g, kg, ml, l, pt");
    if (amount.dry > most_dry)
        throw UsageError("out-of-range", "the amount asked for is more than 10 t dry; that is no bait for a bucket",
                         "check the unit: g, kg, ml, l, pt");
    return amount;
}

}  // namespace baitwright
