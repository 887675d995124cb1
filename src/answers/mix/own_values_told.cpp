#include "answers/mix/own_values_told.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/doubtful_mix.h"
#include "bait/own_values.h"
#include "quantities/listed.h"
#include "quantities/number_text.h"

namespace baitwright {

namespace {

bool has_learnt_mark(const Ingredient& ingredient) {
    return ingredient.absorption.source.origin == Origin::learned || ingredient.slump.source.origin == Origin::learned;
}

bool takes_part(const SolidPart& part) {
    return takes_water(part.ingredient.kind) && part.prepare == Preparation::as_bought;
}

/// "water by your own 7 mixes"
std::string by_own(const std::string& what, int count, const std::string& one, const std::string& several) {
    return what + " by your own " + (count == 1 ? one : std::to_string(count) + " " + several);
}

}  // namespace

void LearntUsed::add_water(const ResolvedMix& mix) {
    if (!mix.learnt) return;
    for (const SolidPart& part : mix.solids) {
        if (!takes_part(part)) continue;
        hand = true;
        const auto place = place_of_bag(*mix.learnt, part.ingredient.name);
        if (!place || !has_learnt_mark(part.ingredient)) continue;
        const LearntWater::Bag& bag = mix.learnt->bags[*place];
        const auto known =
            std::find_if(bags.begin(), bags.end(), [&](const LearntBag& one) { return one.name == bag.name; });
        if (known == bags.end() && bag.mixes > 0) bags.push_back({bag.name, bag.mixes});
    }
}

void LearntUsed::add_cup(const ResolvedMix& mix) {
    if (mix.learnt_mix && mix.learnt_mix->cup_weight)
        cups_weighed = std::max(cups_weighed, mix.learnt_mix->cup_weight->times);
}

std::optional<Warning> LearntUsed::told() const {
    std::vector<std::string> words;
    int mixes = 0;
    for (const LearntBag& bag : bags) mixes = std::max(mixes, bag.mixes);
    if (mixes > 0) words.push_back(by_own("water", mixes, "mix", "mixes"));
    if (hand && mixes == 0) words.emplace_back("water by your own hand, as your other bags told of it");
    if (cups_weighed > 0) words.push_back(by_own("a cup's weight", cups_weighed, "weighing", "weighings"));
    if (holds_seen > 0) words.push_back(by_own("how long it holds", holds_seen, "look", "looks"));
    if (carpets_seen > 0) words.push_back(by_own("how wide it lies", carpets_seen, "look", "looks"));
    if (words.empty()) return std::nullopt;
    return Warning{"learnt", listed(words)};
}

std::optional<Warning> hand_learned(const ResolvedMix& mix) {
    constexpr double worth_a_word = 0.03;
    if (mix.learnt) return std::nullopt;
    double most = 1;
    for (const DoubtfulPart& part : doubtful_mix(mix).parts)
        for (const MarkOrigin origin : {part.absorption.origin, part.second.origin})
            if (std::abs(mix.hand.shift(origin) - 1) > std::abs(most - 1)) most = mix.hand.shift(origin);
    if (std::abs(most - 1) <= worth_a_word) return std::nullopt;
    const std::string more = most > 1 ? "more" : "less";
    return Warning{"hand-learned", "the bags you measured take " + more +
                                       " water than usual: " + number_text(std::round(100 * std::abs(most - 1))) +
                                       " % " + more + " is reckoned in for the others"};
}

}  // namespace baitwright
