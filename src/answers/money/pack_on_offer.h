#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "bait/ingredient.h"

namespace baitwright {

/// A pack that can be bought, any number of times: as it is reckoned with, and as it is sold.
struct PackOnOffer {
    std::int64_t milligrams = 0;  ///< above 0; rounded down, so that many packs hold no less than they count for
    std::int64_t price_minor = 0;
    int shop = -1;          ///< its place among the shops, or any
    std::string name = {};  ///< of the ingredient
    Pack pack = {};
    Mass mass = {};  ///< unrounded
};

/// So many of one pack, needed by a session.
struct PackBought : PackOnOffer {
    std::int64_t count = 0;
    int session = 0;

    [[nodiscard]] Money total() const { return {count * price_minor, pack.price->currency()}; }
    [[nodiscard]] Mass mass_of_all() const { return static_cast<double>(count) * mass; }
};

/// What an ingredient is sold in, at prices in that currency; in any, where it is null.
std::vector<PackOnOffer> packs_on_offer(const Ingredient& ingredient, const Currency* in = nullptr);

/// So many of each pack, in their order; those of which there are none are left out.
std::vector<PackBought> packs_bought(const std::vector<PackOnOffer>& packs, const std::vector<std::int64_t>& counts,
                                     int session = 0);

/// Rounded up, but for what rounding may have added.
std::int64_t whole_milligrams(Mass mass);
Mass mass_of_milligrams(std::int64_t milligrams);

}  // namespace baitwright
