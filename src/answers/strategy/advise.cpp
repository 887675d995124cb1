#include "answers/strategy/advise.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "answers/shared/take_out.h"
#include "answers/strategy/advise_points.h"
#include "answers/strategy/unroll_strategy.h"
#include "bait/raw_seed.h"
#include "bait/resolve_mix.h"
#include "quantities/fault.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/sort_stably.h"
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
    for (const FeedNeed& need : unrolled.feeds)
        found.feeds.push_back({need.name, need.fed.feel, main_colour(need.fed.mix.solids), need.form, need.size,
                               need.count, need.put_ins, need.wet_volume / std::max(need.portions, 1e-9)});
    found.points = points_of(strategy, found.feeds, answer.advice, answer.now);
    found.score = sum_of(found.points);
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

void add_brought(AdvisedStrategy& strategy, const std::vector<BroughtBefore>& all, std::vector<AdvicePoint>& own) {
    for (const BroughtBefore& brought : all) {
        if (folded_name(brought.strategy) != folded_name(strategy.name)) continue;
        const std::optional<AdvicePoint> point = point_of(brought);
        if (!point) continue;
        strategy.points.push_back(*point);
        strategy.score = sum_of(strategy.points);
        own.push_back(*point);
    }
}

/// The fish that the rules know, each once, in the order of the rules.
std::vector<std::string> fish_of_rules(const std::vector<AdviceRule>& rules) {
    std::vector<std::string> known;
    for (const AdviceRule& rule : rules)
        for (const std::string& fish : rule.when.fish)
            if (std::find_if(known.begin(), known.end(),
                             [&](const std::string& other) { return is_same_fish(fish, other); }) == known.end())
                known.push_back(fish);
    return known;
}

bool a_purpose_names(const Shelf& shelf, const std::string& fish) {
    for (const std::string& name : shelf.strategy_names())
        if (names_fish(shelf.strategy(name).purpose, fish)) return true;
    for (const std::string& name : shelf.recipe_names())
        if (names_fish(shelf.recipe(name).purpose, fish)) return true;
    return false;
}

[[noreturn]] void refuse_fish(const std::string& fish, const std::vector<std::string>& known) {
    const std::string nearest = did_you_mean(fish, known);
    const std::string all =
        known.empty() ? "leave it out, or write an [[advice]] for it" : "these are known:\n    " + joined(known, ", ");
    throw UsageError("unknown-fish", "--fish: nothing is known of feeding for " + in_quotes(fish),
                     nearest.empty() ? all : nearest + " " + all);
}

/// The fish as rules and purposes name it, in small letters and in the singular or the plural as they do.
std::string known_fish(const Shelf& shelf, const std::vector<AdviceRule>& rules, const std::string& typed) {
    const std::string fish = folded_name(typed);
    for (const AdviceRule& rule : rules)
        for (const std::string& known : rule.when.fish)
            if (known == fish) return known;
    const std::vector<std::string> known = fish_of_rules(rules);
    for (const std::string& other : known)
        if (is_same_fish(fish, other)) return other;
    for (const std::string_view ending : {"", "s", "es"})
        if (fish.size() > ending.size() + 2 && fish.ends_with(ending)) {
            std::string one = fish.substr(0, fish.size() - ending.size());
            if (a_purpose_names(shelf, one)) return one;
        }
    refuse_fish(typed, known);
}

/// What feeds raw seed is not advised.
template <class Advised, class Fed>
void add_if_fit(std::vector<Advised>& into, const Shelf& shelf, const Fed& fed, const AdviseAnswer& answer) {
    try {
        into.push_back(advised(shelf, fed, answer));
    } catch (const InputError& error) {
        if (!is_of_raw_seed(error)) throw;
    }
}

template <class Advised>
void rank(std::vector<Advised>& all) {
    sort_stably(all.begin(), all.end(), [](const Advised& a, const Advised& b) { return a.score > b.score; });
}

}  // namespace

AdviseAnswer advise(const Shelf& shelf, const std::vector<AdviceRule>& rules, const Circumstances& now,
                    const std::vector<BroughtBefore>& brought) {
    AdviseAnswer answer;
    answer.now = now;
    answer.now.fish.clear();
    for (const std::string& typed : now.fish)
        if (std::string fish = known_fish(shelf, rules, typed); !is_named(answer.now.fish, fish))
            answer.now.fish.push_back(std::move(fish));
    for (const AdviceRule& rule : rules) {
        if (!holds(rule, answer.now)) continue;
        answer.advice.push_back(rule);
        if (!rule.share) continue;
        answer.share.low *= rule.share->low;
        answer.share.high *= rule.share->high;
    }
    for (const std::string& name : shelf.strategy_names())
        add_if_fit(answer.strategies, shelf, shelf.strategy(name), answer);
    for (const std::string& name : shelf.recipe_names()) add_if_fit(answer.mixes, shelf, shelf.recipe(name), answer);
    for (AdvisedStrategy& strategy : answer.strategies) add_brought(strategy, brought, answer.own);
    rank(answer.strategies);
    rank(answer.mixes);
    return answer;
}

}  // namespace baitwright
