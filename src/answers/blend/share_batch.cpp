#include "answers/blend/share_batch.h"

#include <algorithm>
#include <cmath>

#include "answers/mix/mix_doubt.h"
#include "answers/money/pack_sums.h"
#include "answers/shared/usual_seed.h"
#include "bait/ingredient_cautions.h"
#include "bait/pellets_alone.h"
#include "bait/wetted_mix.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

std::vector<Money> split(const Money& whole, std::size_t heads) {
    std::vector<Money> parts;
    const std::vector<double> even(heads, static_cast<double>(whole.minor()) / static_cast<double>(heads));
    for (const std::int64_t minor : round_to_sum(even)) parts.emplace_back(minor, whole.currency());
    return parts;
}

/// The cheapest whole packs for each part, in the currency of the blend. By the smallest packs a sack's worth can cost
/// more than the sack: nobody pays more for what is in his bag than was paid for it.
void buy_parts(const BlendAnswer& blend, SharedBatch& shared) {
    std::int64_t outlay = 0;
    std::vector<double> used;
    for (const BlendShare& share : blend.shares) {
        std::vector<PackOnOffer> packs = packs_on_offer(share.ingredient, blend.currency);
        if (packs.empty()) {
            shared.no_pack.push_back(share.ingredient.name);
            used.push_back(share.exact_cost);
            continue;
        }
        PackSums sums(std::move(packs));
        const PackChoice choice = sums.cheapest(whole_milligrams(share.weigh));
        Mass bought;
        for (PackBought& each : packs_bought(sums.packs(), choice.counts)) {
            bought += each.mass_of_all();
            shared.packs.push_back(std::move(each));
        }
        if (bought - share.weigh >= 0.5 * gram)
            shared.left_over.push_back({share.ingredient.name, bought - share.weigh});
        outlay += choice.outlay_minor;
        used.push_back(std::min(share.exact_cost, static_cast<double>(choice.outlay_minor)));
    }
    shared.used = Money(0, *blend.currency);
    for (const std::int64_t minor : round_to_sum(used)) shared.used += Money(minor, *blend.currency);
    if (!shared.no_pack.empty()) return;
    shared.outlay = Money(outlay, *blend.currency);
    shared.outlay_a_head = split(*shared.outlay, shared.bags.size());
}

/// So little is weighed to the gram.
bool is_small(double grams) {
    return grams < 50;
}

void add_cautions(const Ingredient& ingredient, std::vector<std::string>& words) {
    for (const std::string& word : caution_words(ingredient))
        if (std::find(words.begin(), words.end(), word) == words.end()) words.push_back(word);
}

void take_water(const Shelf& shelf, const BlendAnswer& blend, SharedBatch& shared) {
    const ResolvedMix mix = resolve_as_made(blend.recipe, shelf);
    if (is_soaked_alone(mix)) {
        shared.feel = feel_of_pellets;
        return;  // soaked and drained: no bag has a water of its own
    }
    const WettedMix wetted = wet(numbers_of(mix), mix.feel.aim);
    shared.feel = mix.feel.name;
    shared.water = wetted.water;
    const Mass each = 1.0 * kilogram;
    const Range<Mass> range = water_to_wet(mix, mix.feel.aim, each, usual_seed);
    shared.first_pour = std::min(shared.water, first_pour(range) / each);
    shared.water_low = range.low / each;
    shared.water_high = range.high / each;
}

}  // namespace

std::vector<Mass> shared_to_the_gram(Mass whole, const std::vector<double>& shares) {
    const double grams = std::round(whole.in(gram));
    std::vector<double> exact;
    exact.reserve(shares.size());
    for (const double share : shares) exact.push_back(share * grams);
    std::vector<Mass> masses;
    for (const std::int64_t count : round_to_sum(exact)) masses.push_back(static_cast<double>(count) * gram);
    return masses;
}

std::vector<Mass> shared_out(Mass whole, const std::vector<double>& shares) {
    const double grams = std::round(whole.in(gram)), each = grams / static_cast<double>(shares.size());
    const double step = each < 50 ? 1 : each < 2000 ? 5 : 10;
    std::vector<Mass> masses(shares.size());
    std::vector<double> large;
    double left = grams, large_share = 0;
    for (std::size_t i = 0; i < shares.size(); ++i) {
        if (is_small(shares[i] * grams)) {
            masses[i] = std::round(shares[i] * grams) * gram;
            left -= masses[i].in(gram);
        } else {
            large.push_back(shares[i]);
            large_share += shares[i];
        }
    }
    if (large.empty()) return shared_to_the_gram(whole, shares);
    const double steps = std::floor(left / step);
    for (double& share : large) share *= steps / large_share;
    const std::vector<std::int64_t> counts = round_to_sum(large);
    double odd = left - steps * step;
    for (std::size_t i = 0, next = 0; i < shares.size(); ++i) {
        if (is_small(shares[i] * grams)) continue;
        masses[i] = (static_cast<double>(counts[next++]) * step + odd) * gram;
        odd = 0;
    }
    return masses;
}

SharedBatch share_batch(const Shelf& shelf, const BlendAnswer& blend, int bags) {
    SharedBatch shared;
    const auto heads = static_cast<std::size_t>(bags);
    shared.bags = shared_out(blend.batch, std::vector<double>(heads, 1.0 / bags));
    buy_parts(blend, shared);
    shared.used_a_head = split(shared.used, heads);
    for (const BlendShare& share : blend.shares) {
        add_cautions(share.ingredient, shared.cautions);
        const auto& dry = share.ingredient.keeps.dry;
        if (dry && (!shared.keeps || *dry < *shared.keeps)) shared.keeps = dry;
    }
    take_water(shelf, blend, shared);
    return shared;
}

}  // namespace baitwright
