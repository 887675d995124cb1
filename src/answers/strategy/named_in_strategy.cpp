#include "answers/strategy/named_in_strategy.h"

#include <vector>

#include "bait/resolve_mix.h"
#include "quantities/fault.h"
#include "quantities/listed.h"
#include "quantities/said_name.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

void add_mix(const Recipe& recipe, const Shelf& shelf, std::set<std::string>& names) {
    names.insert(recipe.name);
    try {
        const ResolvedMix mix = resolve(recipe, shelf);
        for (const SolidPart& part : mix.solids) names.insert(part.ingredient.name);
        for (std::size_t i = 0; i < mix.liquids.size() + mix.doses.size(); ++i)
            names.insert(additive_ingredient(mix, i).name);
    } catch (const InputError&) {
        return;  // whoever unrolls the strategy tells what is wrong with it
    }
}

}  // namespace

std::set<std::string> names_in(const Strategy& strategy, const Shelf& shelf) {
    std::set<std::string> names;
    const auto add = [&](const std::string& of) {
        if (const auto ingredient = shelf.find_ingredient(of))
            names.insert(ingredient->name);
        else if (const auto recipe = shelf.find_recipe(of))
            add_mix(*recipe, shelf, names);
    };
    for (const Feed& feed : strategy.feeds)
        for (const FeedPart& part : feed.parts) add(part.of);
    for (const Hookbait& hookbait : strategy.hookbaits) add(hookbait.of);
    return names;
}

std::optional<std::string> exactly_among(const std::string& name, const std::set<std::string>& names) {
    const std::string folded = folded_name(name);
    for (const std::string& known : names)
        if (folded_name(known) == folded) return known;
    return std::nullopt;
}

std::string named_in(const std::string& word, const std::set<std::string>& names, const std::string& whose) {
    const std::vector<std::string> all(names.begin(), names.end());
    if (auto found = said_name(word, all).name) return *std::move(found);
    throw UsageError(fault_of_name(
        word, all, {"not-in-strategy", whose + " no '" + word + "'", "there is: " + joined(names, "; ")}));
}

}  // namespace baitwright
