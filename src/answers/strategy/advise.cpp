#include "answers/strategy/advise.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "answers/strategy/advise_points.h"
#include "answers/strategy/unroll_strategy.h"
#include "bait/resolve_mix.h"
#include "quantities/fault.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

/// The colour that most of the dry mass has.
std::string main_colour(const std::vector<SolidPart>& solids) {
    std::map<std::string, double> shares;
    for (const SolidPart& part : solids) shares[part.ingredient.colour] += double(part.share);
    shares.erase("");
    const auto most = std::max_element(shares.begin(), shares.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == shares.end() ? std::string() : most->first;
}

int sum_of(const std::vector<AdvicePoint>& points) {
    int sum = 0;
    for (const AdvicePoint& point : points) sum += point.points;
    return sum;
}

AdvisedStrategy advised(const Shelf& shelf, const Strategy& strategy, const AdviseAnswer& answer) {
    StrategyRequest request;
    request.length = answer.now.hours;
    Strategy without_spare = strategy;
    without_spare.spare = 0.0;
    const UnrolledStrategy unrolled = unroll_strategy(shelf, without_spare, request);
    AdvisedStrategy found;
    found.name = strategy.name;
    found.points = points_of(strategy, answer.advice, answer.now);
    found.score = sum_of(found.points);
    for (const FeedNeed& need : unrolled.feeds)
        found.feeds.push_back({need.name, need.fed.feel, main_colour(need.fed.mix.solids), need.form, need.size,
                               need.count, need.put_ins});
    found.as_written = unrolled.wet_mass;
    found.low = answer.share.low * unrolled.wet_mass;
    found.high = answer.share.high * unrolled.wet_mass;
    return found;
}

AdvisedMix advised(const Shelf& shelf, const Recipe& recipe, const AdviseAnswer& answer) {
    const ResolvedMix mix = resolve(recipe, shelf);
    AdvisedMix found{recipe.name, mix.feel.name, main_colour(mix.solids), 0, {}};
    found.points = points_of(recipe, found.feel, found.colour, answer.advice, answer.now);
    found.score = sum_of(found.points);
    return found;
}

void refuse_unknown_fish(const Shelf& shelf, const std::vector<AdviceRule>& rules,
                         const std::vector<std::string>& fish) {
    std::vector<std::string> known;
    for (const AdviceRule& rule : rules) known.insert(known.end(), rule.when.fish.begin(), rule.when.fish.end());
    for (const std::string& one_of : fish) {
        if (std::find(known.begin(), known.end(), one_of) != known.end()) continue;
        bool named = false;
        for (const std::string& name : shelf.strategy_names())
            named = named || names_fish(shelf.strategy(name).purpose, one_of);
        for (const std::string& name : shelf.recipe_names())
            named = named || names_fish(shelf.recipe(name).purpose, one_of);
        if (named) continue;
        const std::string hint = did_you_mean(one_of, known);
        throw InputError("unknown-fish", "nothing is known of feeding for '" + one_of + "'",
                         hint.empty() ? "leave it out, or write an [[advice]] for it" : hint);
    }
}

template <class Advised>
void rank(std::vector<Advised>& all) {
    std::stable_sort(all.begin(), all.end(), [](const Advised& a, const Advised& b) { return a.score > b.score; });
}

}  // namespace

AdviseAnswer advise(const Shelf& shelf, const std::vector<AdviceRule>& rules, const Circumstances& now) {
    refuse_unknown_fish(shelf, rules, now.fish);
    AdviseAnswer answer;
    answer.now = now;
    for (const AdviceRule& rule : rules) {
        if (!holds(rule, now)) continue;
        answer.advice.push_back(rule);
        if (!rule.share) continue;
        answer.share.low *= rule.share->low;
        answer.share.high *= rule.share->high;
    }
    for (const std::string& name : shelf.strategy_names())
        answer.strategies.push_back(advised(shelf, shelf.strategy(name), answer));
    for (const std::string& name : shelf.recipe_names())
        answer.mixes.push_back(advised(shelf, shelf.recipe(name), answer));
    rank(answer.strategies);
    rank(answer.mixes);
    return answer;
}

}  // namespace baitwright
