#include "bait/one_currency.h"

#include <algorithm>
#include <set>

#include "bait/pricing.h"
#include "quantities/listed.h"

namespace baitwright {

namespace {

std::size_t things_priced_in(const std::vector<PricedIn>& priced, const Currency& currency) {
    std::set<std::string> names;
    for (const PricedIn& one : priced)
        if (*one.currency == currency) names.insert(one.name);
    return names.size();
}

}  // namespace

const Currency* answer_currency(const std::vector<PricedIn>& priced, const Currency* usual) {
    const Currency* most = nullptr;
    std::size_t things = 0;
    for (const PricedIn& one : priced) {
        if (usual && *one.currency == *usual) return usual;
        if (most && *one.currency == *most) continue;
        const std::size_t here = things_priced_in(priced, *one.currency);
        if (here <= things) continue;
        most = one.currency;
        things = here;
    }
    return most;
}

std::string convert_command(const Currency& to) {
    return "baitwright price convert --to " + std::string(to.code) + " --at RATE";
}

std::string no_price_in(const Currency& currency, const std::vector<PricedElsewhere>& elsewhere) {
    std::vector<std::string> names;
    names.reserve(elsewhere.size());
    for (const PricedElsewhere& one : elsewhere) names.push_back(one.name + " (" + money_text(one.price) + ")");
    return "no price in " + std::string(currency.code) + ": " + listed(names);
}

void add_currencies(std::vector<PricedIn>& priced, const Ingredient& ingredient) {
    const auto first = static_cast<std::ptrdiff_t>(priced.size());
    for (const Pack& pack : ingredient.packs) {
        if (!pack.price) continue;
        const auto same = [&](const PricedIn& one) { return *one.currency == pack.price->currency(); };
        if (std::none_of(priced.begin() + first, priced.end(), same))
            priced.push_back({ingredient.name, &pack.price->currency()});
    }
}

std::optional<PricedElsewhere> priced_elsewhere(const Ingredient& ingredient, const Currency* currency) {
    const Pack* pack = pricing_pack(ingredient);
    if (!pack || pricing_pack(ingredient, currency)) return std::nullopt;
    return PricedElsewhere{ingredient.name, *pack->price};
}

}  // namespace baitwright
