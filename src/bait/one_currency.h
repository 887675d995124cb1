#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/ingredient.h"
#include "quantities/money.h"

/// Prices add up, and can be compared, in one currency alone: here it is decided in which, and what that leaves out.
namespace baitwright {

/// What something is priced in. What is priced in two currencies stands twice.
struct PricedIn {
    std::string name;
    const Currency* currency = nullptr;
};

/// The currency to answer in: the `usual` one where anything is priced in it, else the one that most things are priced
/// in, the first of those that are equal. Null where nothing is priced. `usual` may be null.
const Currency* answer_currency(const std::vector<PricedIn>& priced, const Currency* usual);

/// What is priced in another currency alone, so that it has no price in the answer's.
struct PricedElsewhere {
    std::string name;
    Money price;  ///< the one by which it would be reckoned
};

/// What a person types to turn all prices into that currency: "baitwright price convert --to GBP --at RATE".
std::string convert_command(const Currency& to);

/// "no price in GBP: casters (\u20ac3.90) and sweetcorn (\u20ac1.15)"; they must not be none.
std::string no_price_in(const Currency& currency, const std::vector<PricedElsewhere>& elsewhere);

/// Adds each currency in which packs of the ingredient are priced, once.
void add_currencies(std::vector<PricedIn>& priced, const Ingredient& ingredient);

/// By which price the ingredient would be reckoned, where it has none in that currency; nothing where it has, or none
/// at all. Every currency is that one where it is null.
std::optional<PricedElsewhere> priced_elsewhere(const Ingredient& ingredient, const Currency* currency);

}  // namespace baitwright
