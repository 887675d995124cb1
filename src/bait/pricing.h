#pragma once

#include <optional>
#include <vector>

#include "bait/ingredient.h"
#include "quantities/money.h"

/// Of all of these only prices in that currency count; those in any, where it is null.
namespace baitwright {

/// The pack by which use is priced: the smallest with a price, for that is what most people buy; of one size the one
/// priced last, then the cheapest. Null where none has a price.
const Pack* pricing_pack(const Ingredient& ingredient, const Currency* in = nullptr);

/// What using that mass costs, as a share of the pack, in unrounded minor units; nothing without a price.
std::optional<double> exact_cost_minor(const Ingredient& ingredient, Mass mass, const Currency* in = nullptr);

/// The packs that can be bought: those with a price, of one size from one shop only the one priced last.
std::vector<Pack> offered_packs(const Ingredient& ingredient, const Currency* in = nullptr);

/// Whether the pack has a price, and in that currency.
bool has_price(const Pack& pack, const Currency* in = nullptr);

/// The mass a pack holds, by loose density where it is sold by volume (a liquid's by its density).
Mass mass_in(const Pack& pack, const Ingredient& ingredient);

}  // namespace baitwright
