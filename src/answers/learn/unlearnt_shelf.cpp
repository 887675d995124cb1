#include "answers/learn/unlearnt_shelf.h"

#include <algorithm>

namespace baitwright {

namespace {

constexpr double not_looked_up = 0.2;  // the spread of a learnt value that nothing else is known of

template <class Q>
bool is_learnt(const Property<Q>& property) {
    return property.source.origin == Origin::learned;
}

template <class Q>
void put_back(Property<Q>& property, const Property<Q>* usual) {
    if (!is_learnt(property)) return;
    if (usual && usual->known()) {
        property = *usual;
    } else {
        property.spread = std::max(property.spread, Ratio(not_looked_up));
    }
}

}  // namespace

std::optional<Ingredient> UnlearntShelf::find_ingredient(std::string_view name) const {
    auto in = below().find_ingredient(name);
    if (!in) return in;
    const bool any = is_learnt(in->absorption) || is_learnt(in->slump) || is_learnt(in->diffusivity) ||
                     is_learnt(in->capacity) || is_learnt(in->loose_density);
    if (!any) return in;
    const auto usual = below().find_usual(name);
    const auto from = [&](auto Ingredient::*property) { return usual ? &((*usual).*property) : nullptr; };
    put_back(in->absorption, from(&Ingredient::absorption));
    put_back(in->slump, from(&Ingredient::slump));
    put_back(in->diffusivity, from(&Ingredient::diffusivity));
    put_back(in->capacity, from(&Ingredient::capacity));
    put_back(in->loose_density, from(&Ingredient::loose_density));
    return in;
}

}  // namespace baitwright
