#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "bait/ingredient.h"
#include "quantities/date.h"

namespace baitwright {

/// One price of a pack, or a pack whose price is not known.
struct PriceLine {
    std::string name;
    std::optional<Pack> pack;  ///< nothing for an ingredient of which no pack is known
    bool newest = true;        ///< of its size and shop
    bool reckoned_by = false;  ///< the one by which use is priced
    bool stale = false;
    std::optional<double> per_kg_minor;  ///< in unrounded minor units
};

/// The prices of one or many ingredients.
struct PriceList {
    std::vector<PriceLine> lines;
    std::vector<Warning> warnings;
};

/// The packs of an ingredient as they are priced now. Use is reckoned by a price `in` that currency where it has one;
/// `in` may be null.
std::vector<PriceLine> prices_now(const Ingredient& ingredient, Date today, const Currency* in);

/// All prices that it ever had, the oldest first.
std::vector<PriceLine> prices_ever(const Ingredient& ingredient, const std::vector<Pack>& old, Date today,
                                   const Currency* in);

/// With a warning that names those without a price, and one that names those over a year old.
PriceList price_list(std::vector<PriceLine> lines);

/// What came of telling a price.
struct PriceChange {
    std::string name;
    Pack told;
    std::optional<Pack> before;  ///< the newest of that size and shop until now
    bool in_use = true;          ///< false where a newer one was known
    std::vector<Warning> warnings;
};
/// What telling it changes of an ingredient as it was before.
PriceChange price_change(const Ingredient& before, const Pack& told);

}  // namespace baitwright
