#pragma once

#include <string>
#include <vector>

#include "answers/money/buy_packs.h"
#include "answers/money/shop_sessions.h"

/// From sessions and a shed to the question that the programme over packs answers, in whole milligrams.
namespace baitwright {

/// One ingredient of all sessions.
struct ShoppedIngredient {
    Ingredient ingredient;
    std::vector<Mass> masses;        ///< by session
    std::vector<PackOnOffer> packs;  ///< all that are known

    [[nodiscard]] Mass mass() const;
};

/// All that the sessions take, by name.
std::vector<ShoppedIngredient> shopped_ingredients(const std::vector<SessionNeed>& sessions);

/// How many sessions it is good for that is bought for the first of these days, that one among them.
int sessions_good_for(const Keeping& keeps, const std::vector<SessionNeed>& sessions);

/// Whole numbers by session, which come to the sum rounded up.
std::vector<std::int64_t> whole_numbers(const std::vector<double>& exact);

/// The need of one ingredient, with all its packs.
PackNeed pack_need(const ShoppedIngredient& shopped, const std::vector<SessionNeed>& sessions,
                   const StockOnHand& stock);

}  // namespace baitwright
