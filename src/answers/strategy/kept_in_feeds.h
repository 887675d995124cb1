#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/strategy/feed_need.h"
#include "answers/strategy/strategy_request.h"
#include "bait/shelf.h"
#include "bait/stock_on_hand.h"

/// Damp mix from the cold or the freezer, fed before fresh mix is made.
namespace baitwright {

/// What the feeds of a strategy were worked out from.
struct FedFrom {
    const Shelf& shelf;
    const Strategy& strategy;
    const StrategyRequest& request;
    const std::vector<std::string>& without;  ///< as they are called on the shelf
};

/// Uses the kept mix of the request up in the feeds that hold that mix, session by session, each tub on the days on
/// which it is good, the first to expire first; in feeds of the mix alone before those where it is a part, and where
/// its water fits before those that are drier. What goes in stays as it is; what is to be weighed, wetted and got falls
/// by what is in the kept mix: of each ingredient and of the water, what is kept and what is fresh sum to what it was.
/// So mix that was kept wetter than it is fed is used only as far as the fresh mix can take its water up. Thawing loses
/// nothing: what drips is stirred back in. A tub whose feel the shelf does not know is taken to have the mix's own.
/// **Source**: the balance of mass; that the drip is stirred back in: ours. **Test**:
/// `tests/answers/kept_in_feeds_test.cpp`.
void use_kept(std::vector<FeedNeed>& feeds, const FedFrom& from);

/// Adds to the use of the same tub at the same feel, or as one more.
void add_use(std::vector<KeptUse>& uses, const KeptUse& more);

/// The tubs of all mixes that a strategy feeds, put to those that are there already.
void add_kept(std::vector<KeptMix>& kept, const Strategy& strategy, const StockOnHand& stock);

/// The same question with the tubs of the shed, for a first session on that day.
StrategyRequest with_kept(StrategyRequest what_if, const Strategy& strategy, const StockOnHand& stock,
                          const std::optional<Date>& on);

/// What is left of the tubs once these are used; none is taken out, so that places stay.
void take_used(std::vector<KeptMix>& kept, const std::vector<KeptUse>& used);

}  // namespace baitwright
