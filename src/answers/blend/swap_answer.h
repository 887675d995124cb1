#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "bait/recipe.h"
#include "bait/resolved_mix.h"

namespace baitwright {

/// What one aspect of the mix was and is.
struct SwapChange {
    std::string name, symbol;
    double was = 0, is = 0;
    double steps = 0;  ///< how many noticeable differences lie between
};

struct SwapShare {
    std::string name;
    Preparation prepare = Preparation::as_bought;
    Ratio was, is;
};

/// The mix without what ran out that is most like it. Unrounded.
struct SwapAnswer {
    std::string recipe;
    std::vector<std::string> without;
    std::vector<SwapShare> gone;       ///< what ran out
    std::vector<SwapShare> stand_ins;  ///< the largest share first
    std::vector<SwapShare> rest;       ///< in the order of the mix
    std::vector<SwapChange> changes;   ///< every aspect that could be compared
    std::vector<std::string> not_compared;
    double distance = 0;        ///< noticeable differences, all aspects added
    double least_distance = 0;  ///< with any number of stand-ins

    bool soaked_alone = false;  ///< pellets alone, before and after: they have no feel, and the water is what they keep
    std::string feel;           ///< of the mix
    Ratio water_was, water_is;  ///< to add for that feel, g per g dry
    std::string feel_of_old_water;
    Ratio wetness_of_old_water;
    double hold = 1;                            ///< how much longer a ball holds together
    std::optional<double> price_was, price_is;  ///< of a kilogram of its dry parts, in minor units
    const Currency* currency = nullptr;
    std::vector<std::string> new_cautions;

    std::optional<Recipe> changed;  ///< the mix as it may be saved
    std::string why_not_saved;      ///< where it cannot
    std::vector<Warning> warnings;
};

}  // namespace baitwright
