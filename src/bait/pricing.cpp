#include "bait/pricing.h"

#include "bait/amount.h"

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

const Pack* pricing_pack(const Ingredient& ingredient) {
    const Pack* best = nullptr;
    for (const Pack& pack : ingredient.packs)
        if (pack.price && (!best || better(pack, *best, ingredient))) best = &pack;
    return best;
}

std::optional<double> exact_cost_minor(const Ingredient& ingredient, Mass mass) {
    const Pack* pack = pricing_pack(ingredient);
    if (!pack) return std::nullopt;
    return static_cast<double>(pack->price->minor()) * (mass / mass_in(*pack, ingredient));
}

}  // namespace baitwright
