#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "bait/feel.h"
#include "bait/hand.h"
#include "bait/ingredient.h"
#include "bait/learnt.h"
#include "bait/recipe.h"

namespace baitwright {

/// A solid of the mix with its share of the dry mass of all solids; the shares sum to 1.
struct SolidPart {
    Ingredient ingredient;
    Preparation prepare = Preparation::as_bought;
    Ratio share;
    std::optional<UsualMarks> usual = std::nullopt;  ///< of a bag with a measured mark, where the shelf knows them
};

/// A liquid that the recipe states as a part: grams per gram dry.
struct LiquidPart {
    Ingredient ingredient;
    Ratio per_dry;
};

/// An additive dosed into the whole mix, or into the one of its recipes that asked for it.
struct ResolvedDose {
    Ingredient ingredient;
    DoseRate rate;
    Ratio reach;             ///< share of the dry mass that it is dosed by
    SpecificVolume pellets;  ///< loose volume of pellets that it is dosed by, per dry mass
};

/// A recipe with its recipes in recipes opened up and every measure turned to mass: ready to be scaled.
struct ResolvedMix {
    std::string name;
    Feel feel;
    std::vector<SolidPart> solids;
    std::vector<LiquidPart> liquids;
    std::vector<ResolvedDose> doses;
    Mass as_written;                           ///< dry mass of the recipe as it stands; 0 where it states shares only
    Hand hand;                                 ///< learned from the log, or from the bags in it that were measured
    std::optional<LearntMix> learnt_mix = {};  ///< of it as it is written: heeded by `numbers_of` (cups) and by `drop`
    std::shared_ptr<const LearntWater> learnt = nullptr;  ///< of the log: the marks of its learnt bags are those
};

/// The i-th additive: the liquid parts come first, then the doses.
inline const Ingredient& additive_ingredient(const ResolvedMix& mix, std::size_t i) {
    return i < mix.liquids.size() ? mix.liquids[i].ingredient : mix.doses[i - mix.liquids.size()].ingredient;
}

}  // namespace baitwright
