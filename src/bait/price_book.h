#pragma once

#include <string>
#include <vector>

#include "bait/pack.h"
#include "quantities/date.h"

namespace baitwright {

/// What is known of an ingredient's prices: for each size and shop the pack with its newest price, by which is
/// reckoned, and all prices that it had before.
struct PriceBook {
    std::vector<Pack> packs;
    std::vector<Pack> old;  ///< in the order in which they were replaced or told
};

/// An ingredient's name and its packs, with a price or without.
struct NamedPacks {
    std::string name;
    std::vector<Pack> packs;
};

/// The same pack at the same shop, whatever it costs.
bool same_offer(const Pack& a, const Pack& b);

/// Puts a price into the book. It goes in the place of that size and shop's older one (one without a date is older than
/// any), which joins the old ones; where a newer one is known it joins them itself. A pack of that size with neither
/// price nor shop takes it. Told twice it stands once. The other packs may be priced in another currency.
void enter_price(PriceBook& book, const Pack& told);

/// Whether others say what this book never knew: a size or a shop that it has no pack of, or a price newer than its
/// own. What stands among its old prices it knew, and had a reason to replace or take out.
bool tell_more(const std::vector<Pack>& others, const PriceBook& book);

/// Over a year old on that day; a price without a date never is, for nobody can tell.
bool is_stale(const Pack& pack, Date today);

}  // namespace baitwright
