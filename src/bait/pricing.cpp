#include "bait/pricing.h"

#include <algorithm>

#include "bait/amount.h"
#include "quantities/suggestion.h"

namespace baitwright {

namespace {

bool better(const Pack& a, const Pack& b, const Ingredient& ingredient) {
    const Mass size_a = mass_in(a, ingredient), size_b = mass_in(b, ingredient);
    if (size_a != size_b) return size_a < size_b;
    if (a.on != b.on) return a.on > b.on;
    return a.price->minor() < b.price->minor();
}

}  // namespace

Mass mass_in(const Pack& pack, const Ingredient& ingredient) {
    return mass_of_amount(pack.size, ingredient);
}

bool has_price(const Pack& pack, const Currency* in) {
    return pack.price && (!in || pack.price->currency() == *in);
}

const Pack* pricing_pack(const Ingredient& ingredient, const Currency* in) {
    const Pack* best = nullptr;
    for (const Pack& pack : ingredient.packs)
        if (has_price(pack, in) && (!best || better(pack, *best, ingredient))) best = &pack;
    return best;
}

std::vector<Pack> offered_packs(const Ingredient& ingredient, const Currency* in) {
    std::vector<Pack> offered;
    for (const Pack& pack : ingredient.packs) {
        if (!has_price(pack, in)) continue;
        const auto same = std::find_if(offered.begin(), offered.end(), [&](const Pack& other) {
            // On one day in two currencies: neither is the newer, so both stand.
            const bool comparable = other.on != pack.on || other.price->currency() == pack.price->currency();
            return comparable && other.size == pack.size && folded_name(other.shop) == folded_name(pack.shop);
        });
        if (same == offered.end())
            offered.push_back(pack);
        else if (pack.on > same->on || (pack.on == same->on && pack.price->minor() < same->price->minor()))
            *same = pack;
    }
    return offered;
}

std::optional<double> exact_cost_minor(const Ingredient& ingredient, Mass mass, const Currency* in) {
    const Pack* pack = pricing_pack(ingredient, in);
    if (!pack) return std::nullopt;
    return static_cast<double>(pack->price->minor()) * (mass / mass_in(*pack, ingredient));
}

}  // namespace baitwright
