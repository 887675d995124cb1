#include "answers/money/cost_range.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/doubtful_mix.h"
#include "answers/mix/drawn_solid.h"
#include "answers/mix/few_normals.h"
#include "physics/normal_quantile.h"
#include "physics/quasi_random.h"
#include "quantities/suggestion.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr std::size_t cost_points = 256;
constexpr Mass too_little_kept = 1e-3 * gram;  // what rounding leaves of a tub
constexpr std::size_t unlearnt_normals = 3;    // the day, the hand, the error of memory
constexpr std::size_t each_solid = 6;          // normals: three for the marks, three for the body
constexpr std::size_t most_solids = 32;
static_assert(unlearnt_normals + each_solid * most_solids == most_cost_normals);

std::size_t place_of(const std::vector<IngredientNeed>& totals, const std::string& name) {
    const auto found = std::find_if(totals.begin(), totals.end(),
                                    [&](const IngredientNeed& need) { return need.ingredient.name == name; });
    return static_cast<std::size_t>(found - totals.begin());
}

/// A feed with what a draw needs of it, all looked up beforehand.
struct DrawnFeed {
    const FeedNeed* need;
    MixNumbers numbers;    // the densities and sizes of the last draw in it
    DoubtfulMix doubtful;  // the parts that take water
    SharedDoubt shared;
    std::vector<DoubtfulBody> bodies;            // a solid each
    std::vector<std::size_t> solids, additives;  // their places among the totals
    struct Kept {
        std::size_t place;
        Mass mass;
        double share;  // of what the feed takes of it in the middle
    };
    std::vector<Kept> kept;  // lies made up already, and was weighed
    double more_kept = 0;    // that its tubs still hold, of what it uses of them: then it is filled as in the middle
    Mass wet;                // that it takes in the middle, fresh and kept

    DrawnFeed(const FeedNeed& feed, const std::vector<IngredientNeed>& totals, const LearntWater& learnt)
        : need(&feed),
          numbers(numbers_of(feed.fed.mix)),
          doubtful(learnt.known() ? doubtful_mix(feed.fed.mix, learnt) : doubtful_mix(feed.fed.mix)),
          shared(doubtful.hand),
          bodies(doubtful_bodies(feed.fed.mix)) {
        const ResolvedMix& mix = feed.fed.mix;
        for (const SolidPart& part : mix.solids) solids.push_back(place_of(totals, part.ingredient.name));
        for (std::size_t i = 0; i < numbers.additives.size(); ++i)
            additives.push_back(place_of(totals, additive_ingredient(mix, i).name));
        for (const IngredientNeed& part : feed.ingredients)
            if (part.kept > Mass{})
                kept.push_back(
                    {place_of(totals, part.ingredient.name), part.kept, part.kept / (part.kept + part.mass)});
        const FedPerDry each = per_dry(need->fed, numbers);
        wet = each.wet_mass * (need->portions * dry_mass_of(need->size, each));
    }

    /// The first normals are shared by all feeds.
    void draw(const std::vector<double>& normals, std::size_t first) {
        const auto own = [&](std::size_t solid) { return &normals[first + each_solid * solid]; };
        const MarkFactors factors = doubtful.learnt_normals ? MarkFactors{} : shared.draw(normals.data());
        const double day = std::exp(log_normal_sigma(day_spread) * normals[0]);
        for (const DoubtfulPart& part : doubtful.parts) {
            if (solids[part.solid] >= most_solids) continue;
            const double* each = own(solids[part.solid]);
            numbers.solids[part.solid].marks = doubtful.learnt_normals ? drawn_by_learnt(part, day, &normals[1], each)
                                                                       : drawn_marks(part, factors, each);
        }
        for (std::size_t i = 0; i < solids.size(); ++i)
            if (solids[i] < most_solids) bodies[i].draw(numbers.solids[i], own(solids[i]) + 3);
    }

    void add_to(std::vector<Mass>& needs) const {
        const FedPerDry each = per_dry(need->fed, numbers);
        const Mass dry = need->portions * dry_mass_of(need->size, each);
        const double filled = more_kept > 0 ? std::min(1.0, (1 + more_kept) * (wet / (each.wet_mass * dry))) : 0.0;
        const auto add = [&](std::size_t place, Mass mass) { needs[place] += (1 - filled * kept_share(place)) * mass; };
        for (std::size_t i = 0; i < solids.size(); ++i) add(solids[i], numbers.solids[i].share * dry);
        for (std::size_t i = 0; i < additives.size(); ++i) add(additives[i], each.additives[i] * dry);
        if (more_kept > 0) return;
        for (const Kept& part : kept) needs[part.place] -= part.mass;
    }

private:
    [[nodiscard]] double kept_share(std::size_t place) const {
        for (const Kept& part : kept)
            if (part.place == place) return part.share;
        return 0;
    }
};

/// What the tubs of a mix still hold once all feeds are served, of what is used of them. A tub that none needed is bait
/// too, where it is good on the day.
double left_of_used(const KeptMix& like, const UnrolledStrategy& unrolled, const StrategyRequest& asked) {
    Mass held, used;
    for (std::size_t place = 0; place < asked.kept.size(); ++place) {
        const KeptMix& tub = asked.kept[place];
        if (folded_name(tub.of) != folded_name(like.of) || tub.feel != like.feel) continue;
        Mass of_tub;
        for (const KeptUse& use : unrolled.kept)
            if (use.place == place) of_tub += use.of.mass;
        if (of_tub > Mass{} || is_good_on(tub, asked.on)) held += tub.mass;
        used += of_tub;
    }
    return held - used > too_little_kept ? double(held / used) - 1 : 0.0;
}

/// The same for all that a feed uses.
double kept_left_over(const FeedNeed& feed, const UnrolledStrategy& unrolled, const StrategyRequest& asked) {
    Mass used, left;
    for (const KeptUse& use : feed.kept) {
        used += use.of.mass;
        left += left_of_used(asked.kept[use.place], unrolled, asked) * use.of.mass;
    }
    return used > Mass{} ? double(left / used) : 0.0;
}

/// What was learnt of all that is fed, by few normals.
LearntWater learnt_of_feeds(const UnrolledStrategy& unrolled) {
    std::vector<const LearntWater*> learnt;
    for (const FeedNeed& feed : unrolled.feeds)
        if (feed.fed.mix.learnt) learnt.push_back(feed.fed.mix.learnt.get());
    return learnt.empty() ? LearntWater{} : few_normals(learnt_of_all(learnt));
}

/// What the feeds do not take: the hookbaits.
std::vector<Mass> fixed_needs(const UnrolledStrategy& unrolled) {
    std::vector<Mass> needs;
    for (const IngredientNeed& need : unrolled.totals) needs.push_back(need.mass);
    for (const FeedNeed& feed : unrolled.feeds)
        for (const IngredientNeed& need : feed.ingredients)
            needs[place_of(unrolled.totals, need.ingredient.name)] -= need.mass;
    return needs;
}

double used_of(const std::vector<Mass>& needs, const std::vector<PricedIngredient>& priced) {
    double used = 0;
    for (std::size_t i = 0; i < needs.size(); ++i) {
        const NeedCost cost = priced[i].cost_of(std::max(Mass{}, needs[i]));
        if (cost.priced) used += cost.used_of_bought + cost.used_of_stock;
    }
    return used;
}

}  // namespace

Range<double> used_range(const UnrolledStrategy& unrolled, const std::vector<PricedIngredient>& priced,
                         const StrategyRequest& asked, std::uint64_t seed) {
    std::vector<DrawnFeed> feeds;
    const LearntWater learnt = learnt_of_feeds(unrolled);
    for (const FeedNeed& feed : unrolled.feeds) {
        feeds.emplace_back(feed, unrolled.totals, learnt);
        feeds.back().more_kept = kept_left_over(feed, unrolled, asked);
    }
    const std::size_t shared = learnt.known() ? 1 + learnt.rank : unlearnt_normals;
    const std::vector<Mass> fixed = fixed_needs(unrolled);
    QuasiRandomNormals draws(shared + each_solid * std::min(most_solids, unrolled.totals.size()), seed);
    std::vector<double> normals(draws.coordinates()), used;
    for (std::size_t point = 0; point < cost_points; ++point) {
        draws.next(normals);
        std::vector<Mass> needs = fixed;
        for (DrawnFeed& feed : feeds) {
            feed.draw(normals, shared);
            feed.add_to(needs);
        }
        used.push_back(used_of(needs, priced));
    }
    const auto quantile = [&](double p) { return quantile_in_place(used, p); };
    const double low = quantile(0.05), middle = quantile(0.5), high = quantile(0.95);
    return {low, middle, high};
}

}  // namespace baitwright
