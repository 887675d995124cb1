#pragma once

#include <cstddef>
#include <functional>
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

/// A strategy, for so many sessions.
struct TimedStrategy {
    const Strategy* strategy;
    int times = 1;
};
/// Unrolls one of them, by its place.
using UnrollOne = std::function<UnrolledStrategy(std::size_t strategy, const StrategyRequest& what_if)>;
/// The sessions one after the other, as they are named. A tub of kept mix is used in the first that it is good for.
std::vector<SessionNeed> sessions_in_turn(const std::vector<TimedStrategy>& strategies, const StockOnHand& stock,
                                          StrategyRequest what_if, SessionDays days, const UnrollOne& unroll);

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
