#include "answers/money/pack_on_offer.h"

#include <algorithm>
#include <cmath>

#include "bait/pricing.h"
#include "quantities/units.h"

namespace baitwright {

namespace {

constexpr double milligram_slack = 1e-6;

double in_milligrams_exactly(Mass mass) {
    return mass.in(gram)*1000;
}

}  // namespace

std::vector<PackOnOffer> packs_on_offer(const Ingredient& ingredient, const Currency* in) {
    std::vector<PackOnOffer> packs;
    for (const Pack& pack : offered_packs(ingredient, in)) {
        const Mass mass = mass_in(pack, ingredient);
        const auto milligrams = static_cast<std::int64_t>(in_milligrams_exactly(mass) + milligram_slack);
        packs.push_back({std::max<std::int64_t>(1, milligrams), pack.price->minor(), -1, ingredient.name, pack, mass});
    }
    return packs;
}

std::vector<PackBought> packs_bought(const std::vector<PackOnOffer>& packs, const std::vector<std::int64_t>& counts,
                                     int session) {
    std::vector<PackBought> bought;
    for (std::size_t i = 0; i < counts.size(); ++i)
        if (counts[i] > 0) bought.push_back({packs[i], counts[i], session});
    return bought;
}

std::int64_t whole_milligrams(Mass mass) {
    return static_cast<std::int64_t>(std::ceil(in_milligrams_exactly(mass) - milligram_slack));
}

Mass mass_of_milligrams(std::int64_t milligrams) {
    return static_cast<double>(milligrams) / 1000 * gram;
}

}  // namespace baitwright
