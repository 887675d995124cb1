#include "answers/shared/stale_prices.h"

#include <algorithm>

#include "answers/shared/stock_answer.h"
#include "bait/price_book.h"
#include "bait/pricing.h"
#include "quantities/in_quotes.h"
#include "quantities/listed.h"
#include "quantities/worded.h"

namespace baitwright {

std::optional<Warning> stale_prices(const std::vector<const Ingredient*>& ingredients, Date today, const Currency* in) {
    std::vector<std::string> stale;
    for (const Ingredient* ingredient : ingredients) {
        const Pack* pack = pricing_pack(*ingredient, in);
        if (!pack || !is_stale(*pack, today)) continue;
        std::string dated = ingredient->name + " (" + date_text(*pack->on) + ")";
        if (std::find(stale.begin(), stale.end(), dated) == stale.end()) stale.push_back(std::move(dated));
    }
    return stale_warning(stale);
}

std::optional<Warning> stale_warning(const std::vector<std::string>& dated) {
    if (dated.empty()) return std::nullopt;
    const char* what = dated.size() == 1 ? "the price is over a year old: " : "these prices are over a year old: ";
    return Warning{"stale-price", what + listed(dated)};
}

std::optional<Warning> no_price_warning(const std::vector<std::string>& names, const std::string& left_out_of) {
    if (names.empty()) return std::nullopt;
    return Warning{"no-price",
                   "no price is known for " + listed(names) + ", so " + leaves_out(left_out_of, names.size()), true};
}

std::string leaves_out(const std::string& what, std::size_t things) {
    return what + " leaves " + (things == 1 ? "it" : "them") + " out";
}

Warning other_currency_warning(const std::vector<PricedElsewhere>& elsewhere, const Currency& in,
                               const std::string& so) {
    return {"other-currency",
            no_price_in(in, elsewhere) + ", so " + so + "; put all prices into one currency" +
                worded(" with " + in_quotes(convert_command(in)), ""),
            true};
}

std::vector<std::string> priced_nowhere(const std::vector<std::string>& unpriced,
                                        const std::vector<PricedElsewhere>& elsewhere) {
    std::vector<std::string> names = unpriced;
    std::erase_if(names, [&](const std::string& name) {
        return std::any_of(elsewhere.begin(), elsewhere.end(),
                           [&](const PricedElsewhere& one) { return one.name == name; });
    });
    return names;
}

std::vector<const Ingredient*> ingredients_of(const ResolvedMix& mix) {
    std::vector<const Ingredient*> ingredients;
    for (const SolidPart& part : mix.solids) ingredients.push_back(&part.ingredient);
    for (std::size_t i = 0; i < mix.liquids.size() + mix.doses.size(); ++i)
        ingredients.push_back(&additive_ingredient(mix, i));
    return ingredients;
}

}  // namespace baitwright
