#include "answers/mix/mix_for_once.h"

#include <algorithm>
#include <cmath>
#include <variant>

#include "answers/mix/several_targets.h"
#include "answers/shared/take_out.h"
#include "bait/amount.h"
#include "bait/own_values.h"
#include "bait/pellets_alone.h"
#include "bait/raw_seed.h"
#include "bait/resolve_mix.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

std::vector<std::string> names_in_mix(const ResolvedMix& mix) {
    std::vector<std::string> names;
    for (const SolidPart& part : mix.solids) names.push_back(part.ingredient.name);
    for (const LiquidPart& part : mix.liquids) names.push_back(part.ingredient.name);
    for (const ResolvedDose& dose : mix.doses) names.push_back(dose.ingredient.name);
    return names;
}

/// What is added for once: opened up, or a liquid.
struct OtherPart {
    std::variant<ResolvedMix, Ingredient> what;
    Mass mass;
};

OtherPart other_part(const ForOnce::Extra& extra, const Shelf& shelf) {
    auto recipe = shelf.find_ingredient(extra.of) ? std::nullopt : shelf.find_recipe(extra.of);
    if (!recipe && !shelf.find_ingredient(extra.of) && !said_name(extra.of, shelf.ingredient_names()).name)
        if (const auto meant = said_name(extra.of, shelf.recipe_names()).name) recipe = shelf.find_recipe(*meant);
    if (recipe) {
        if (const Mass* mass = std::get_if<Mass>(&extra.amount)) return {resolve(*recipe, shelf), *mass};
        throw UsageError("unfit-amount", in_quotes(recipe->name) + " is a mix: how much a measure of it weighs depends",
                         "say its dry mass, as in --with \"" + recipe->name + "=200 g\"");
    }
    const Ingredient ingredient = shelf.ingredient(extra.of);
    if (is_raw_seed(ingredient)) throw UsageError(raw_seed_fault(ingredient, shelf));
    const Mass mass = mass_of_amount(extra.amount, ingredient);
    if (ingredient.kind == IngredientKind::liquid) return {ingredient, mass};
    Recipe alone;
    alone.name = ingredient.name;
    alone.parts.push_back({ingredient.name, Share{1}, Preparation::as_bought});
    return {resolve(alone, shelf), mass};
}

void add_solid(ResolvedMix& mix, const SolidPart& solid, Ratio share) {
    const auto same = std::find_if(mix.solids.begin(), mix.solids.end(), [&](const SolidPart& part) {
        return part.ingredient.name == solid.ingredient.name && part.prepare == solid.prepare;
    });
    if (same != mix.solids.end()) {
        same->share = same->share + share;
        return;
    }
    mix.solids.push_back(solid);
    mix.solids.back().share = share;
}

/// Adds so much of another mix, as a share of the whole's dry mass.
void add_mix(ResolvedMix& whole, const ResolvedMix& other, Ratio share) {
    for (const SolidPart& solid : other.solids) add_solid(whole, solid, share * solid.share);
    for (const LiquidPart& liquid : other.liquids) whole.liquids.push_back({liquid.ingredient, share * liquid.per_dry});
    for (ResolvedDose dose : other.doses) {
        dose.reach = share * dose.reach;
        dose.pellets = share * dose.pellets;
        whole.doses.push_back(std::move(dose));
    }
}

/// The mix in so much, and the others.
ResolvedMix together(const ResolvedMix& plain, Mass rest, const std::vector<OtherPart>& others, const Shelf& shelf) {
    Mass dry = rest;
    for (const OtherPart& other : others)
        if (std::holds_alternative<ResolvedMix>(other.what)) dry += other.mass;
    ResolvedMix whole;
    whole.feel = plain.feel;
    add_mix(whole, plain, rest / dry);
    std::vector<std::string> names;
    for (const OtherPart& other : others) {
        if (const auto* mix = std::get_if<ResolvedMix>(&other.what)) {
            add_mix(whole, *mix, other.mass / dry);
            names.push_back(mix->name);
        } else {
            const auto& liquid = std::get<Ingredient>(other.what);
            whole.liquids.push_back({liquid, other.mass / dry});
            names.push_back(liquid.name);
        }
    }
    whole.as_written = dry;
    heed_own_values(whole, shelf);
    soak_pellets_alone(whole);
    whole.name = plain.name + " with " + listed(names);
    return whole;
}

ResolvedMix with_others(const ResolvedMix& plain, const Shelf& shelf, const MixRequest& request) {
    std::vector<OtherPart> others;
    Mass dry_others;
    for (const ForOnce::Extra& extra : request.once.with) {
        others.push_back(other_part(extra, shelf));
        if (std::holds_alternative<ResolvedMix>(others.back().what)) dry_others += others.back().mass;
    }
    if (std::holds_alternative<AsWritten>(request.target) && plain.as_written > Mass{})
        return together(plain, plain.as_written, others, shelf);
    // The batch's dry mass and what the others are of it decide each other: both are settled within a few rounds.
    constexpr int most_rounds = 60;
    constexpr double settled = 1e-13;
    // What is on hand may name the others, which the mix alone does not hold: it is begun with plenty of the rest.
    const bool on_hand = std::holds_alternative<OnHand>(request.target);
    Mass batch = on_hand ? 2 * dry_others + 1.0 * kilogram : scale_batch(plain, shelf.feels(), request).dry_mass;
    for (int round = 0;; ++round) {
        const Mass rest = batch - dry_others;
        if (rest < 1e-3 * batch)
            throw UsageError("more-than-the-batch", "what is added for once is as much as the whole batch, or more",
                             "add less, or make more");
        ResolvedMix mix = together(plain, rest, others, shelf);
        const Mass next = scale_batch(mix, shelf.feels(), request).dry_mass;
        if (std::abs(next / batch - 1) < settled || round == most_rounds) return mix;
        batch = on_hand ? (batch + next) / 2 : next;
    }
}

}  // namespace

std::vector<std::string> named_in_mix(const std::vector<std::string>& said, const ResolvedMix& mix) {
    const std::vector<std::string> names = names_in_mix(mix);
    std::vector<std::string> found, quoted;
    quoted.reserve(names.size());
    for (const std::string& name : names) quoted.push_back(in_quotes(name));
    for (const std::string& word : said) {
        const SaidName meant = said_name(word, names);
        if (!meant.name)
            throw UsageError("not-in-mix",
                             meant.several.empty() ? in_quotes(word) + " is not in " + mix.name
                                                   : in_quotes(word) + " may be several things in " + mix.name,
                             "it holds " + listed(quoted));
        found.push_back(*meant.name);
    }
    return found;
}

ResolvedMix resolve_for_once(const Recipe& recipe, const Shelf& shelf, const MixRequest& request) {
    ResolvedMix mix = resolve(recipe, shelf);
    if (!request.once.without.empty()) {
        const std::vector<std::string> without = named_in_mix(request.once.without, mix);
        if (!take_out(mix, without))
            throw UsageError("nothing-left", "without that nothing dry is left of " + mix.name, "leave something in");
        mix.name += " without " + listed(without);
    }
    if (!request.once.with.empty()) return with_others(mix, shelf, request);
    soak_pellets_alone(mix);
    return mix;
}

}  // namespace baitwright
