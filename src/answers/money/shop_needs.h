#pragma once

#include <string>
#include <vector>

#include "answers/money/buy_packs.h"
#include "answers/money/shop_request.h"
#include "answers/strategy/unroll_strategy.h"
#include "bait/stock_on_hand.h"
#include "quantities/date.h"

/// From sessions and a shed to the question that the programme over packs answers, in whole milligrams.
namespace baitwright {

/// One session to shop for, and what it takes.
struct SessionNeed {
    std::string strategy;
    Date on;
    std::vector<IngredientNeed> needs;
    std::vector<KeptUse> kept = {};  ///< mix that is there, of which nothing is got
};

/// So many sessions of a strategy, each on the next of the days; the days then begin after them.
void add_sessions(std::vector<SessionNeed>& sessions, const UnrolledStrategy& unrolled, int times, SessionDays& days);

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
