#include "bait/own_values.h"

#include <cmath>

#include "bait/learned_hand.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// Whether the mark is what was learnt: written by it, or measured before and in it already.
bool is_in_it(const Property<Ratio>& mark, double measured) {
    constexpr double same = 1e-6;  // a file keeps fewer digits than the store
    if (mark.source.origin == Origin::learned) return true;
    return mark.source.origin == Origin::measured && std::abs(mark.value - measured) <= same * measured;
}

Property<Ratio> learnt_mark(double median, double variance, int mixes) {
    return {median, std::sqrt(std::expm1(variance)), {Origin::learned, std::to_string(mixes) + " mixes"}};
}

/// A and B of a bag as they were learnt; B of one whose A was measured since is that A and the learnt gap.
void take_learnt_marks(Ingredient& ingredient, const LearntWater& learnt, std::size_t place) {
    const LearntWater::Bag& bag = learnt.bags[place];
    const std::size_t absorption = LearntWater::absorption(place), gap = LearntWater::gap(place);
    const bool slump_is =
        is_in_it(ingredient.slump, bag.measured_slump) ||
        (ingredient.slump.source.origin == Origin::derived && is_in_it(ingredient.absorption, bag.measured_absorption));
    if (is_in_it(ingredient.absorption, bag.measured_absorption))
        ingredient.absorption =
            learnt_mark(std::exp(bag.log_absorption), learnt.covariance(absorption, absorption), bag.mixes);
    if (slump_is)
        ingredient.slump =
            learnt_mark(ingredient.absorption.value + std::exp(bag.log_gap), learnt.covariance(gap, gap), bag.mixes);
}

void find_usual_marks(ResolvedMix& mix, const Shelf& shelf) {
    for (SolidPart& part : mix.solids) {
        part.usual.reset();
        if (!has_measured_mark(part.ingredient)) continue;
        if (const auto usual = shelf.find_usual(part.ingredient.name))
            part.usual = UsualMarks{usual->absorption, usual->slump, usual->moisture};
    }
}

}  // namespace

std::optional<std::size_t> place_of_bag(const LearntWater& learnt, const std::string& ingredient) {
    for (std::size_t i = 0; i < learnt.bags.size(); ++i)
        if (learnt.bags[i].name == ingredient) return i;
    return std::nullopt;
}

Hand hand_of(const LearntWater& learnt) {
    constexpr std::size_t hand = LearntWater::hand, memory = LearntWater::memory;
    return {learnt.log_hand,
            learnt.log_memory,
            learnt.covariance(hand, hand),
            learnt.covariance(memory, memory),
            learnt.covariance(hand, memory),
            true};
}

void heed_own_values(ResolvedMix& mix, const Shelf& shelf) {
    std::vector<std::string> names;
    for (const SolidPart& part : mix.solids) names.push_back(part.ingredient.name);
    LearntWater learnt = shelf.learnt_water(names);
    if (!learnt.known()) {
        find_usual_marks(mix, shelf);
        mix.hand = learned_hand(mix.solids);
        return;
    }
    for (SolidPart& part : mix.solids)
        for (std::size_t i = 0; i < learnt.bags.size(); ++i) {
            if (folded_name(learnt.bags[i].name) != folded_name(part.ingredient.name)) continue;
            learnt.bags[i].name = part.ingredient.name;
            take_learnt_marks(part.ingredient, learnt, i);
        }
    find_usual_marks(mix, shelf);
    mix.hand = hand_of(learnt);
    mix.learnt = std::make_shared<const LearntWater>(std::move(learnt));
}

}  // namespace baitwright
