#pragma once

#include <string>
#include <vector>

#include "answers/money/buy_packs.h"
#include "answers/money/shop_sessions.h"

/// From sessions and a shed to the question that the programme over packs answers, in whole grams.
namespace baitwright {

/// One ingredient of all sessions.
struct ShoppedIngredient {
    Ingredient ingredient;
    std::vector<double> grams;  ///< by session
    std::vector<Pack> packs;    ///< those with a price
    std::vector<Pack> sold;     ///< of which at the shops gone to
};

/// All that the sessions take, by name.
std::vector<ShoppedIngredient> shopped_ingredients(const std::vector<SessionNeed>& sessions,
                                                   const std::vector<std::string>& at);

/// How many sessions it is good for that is bought for the first of these days, that one among them.
int sessions_good_for(const Keeping& keeps, const std::vector<SessionNeed>& sessions);

/// Whole grams by session, which come to the sum rounded up.
std::vector<std::int64_t> whole_grams(const std::vector<double>& grams);

/// The need of one ingredient; `shops` are numbered by their place.
PackNeed pack_need(const ShoppedIngredient& shopped, const std::vector<SessionNeed>& sessions, const StockOnHand& stock,
                   const std::vector<std::string>& shops);

}  // namespace baitwright
