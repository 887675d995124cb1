#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "answers/money/cost_request.h"
#include "answers/money/pack_on_offer.h"
#include "answers/shared/range.h"
#include "answers/strategy/unroll_strategy.h"
#include "bait/one_currency.h"
#include "bait/stock_on_hand.h"

namespace baitwright {

/// What one ingredient comes to. Without a price there is no money in it.
struct CostLine {
    std::string name;
    Mass need;
    Mass from_stock;
    Mass left_over;  ///< of the packs bought
    Keeping keeps;
    std::optional<Money> used;        ///< bought and from stock
    std::optional<Money> outlay;      ///< of the packs bought
    std::optional<Money> left_value;  ///< outlay less what is used of it
};

/// What a strategy costs. *Used*: the share of the packs that is eaten up, at the price by which `mix` reckons it, but
/// never more than is paid for it; what is in the shed at what was paid. *Outlay*: the cheapest whole packs for what
/// the shed lacks. Lines sum to the totals to the penny. All of it is in one currency (`answer_currency`). Where a
/// price is missing, or is in another one, the sums are of the rest; stock that was paid for in another one is reckoned
/// at the price of now. Kept mix that is used costs nothing: it was paid for before.
struct StrategyCost {
    UnrolledStrategy unrolled;
    std::vector<CostLine> lines;
    std::vector<PackBought> packs;
    std::vector<std::string> unpriced;        ///< ingredients without a price: the sums leave them out
    std::vector<PricedElsewhere> elsewhere;   ///< those of them that are priced in another currency
    std::vector<PricedIn> priced_in;          ///< what packs, or where no pack has a price the stock, are priced in
    std::vector<std::string> paid_elsewhere;  ///< of the priced, those whose stock was paid for in another
    const Currency* currency = nullptr;       ///< null where nothing has a price
    const Currency* asked_in = nullptr;       ///< the same, or the one that was asked for and that nothing is priced in
    std::int64_t used_minor = 0, outlay_minor = 0, left_over_minor = 0, from_stock_minor = 0;
    std::optional<Range<double>> used_range;  ///< minor units, not whole
    bool proven = true;                       ///< no whole packs cost less
    std::vector<Warning> warnings;

    [[nodiscard]] bool complete() const { return unpriced.empty(); }
    /// Minor units, not whole, of what is used.
    [[nodiscard]] double per_hour() const;     ///< of each session
    [[nodiscard]] double per_session() const;  ///< for everyone
    [[nodiscard]] double per_angler() const;   ///< for all sessions
    [[nodiscard]] std::optional<double> per_kilogram_wet() const;
    [[nodiscard]] std::optional<double> per_litre() const;
};

/// Unrolls, buys and prices it. Throws what `unroll_strategy` throws, UsageError for a price of what the strategy does
/// not feed.
StrategyCost cost_strategy(const Shelf& shelf, const Strategy& strategy, const StockOnHand& stock,
                           const CostRequest& request);

}  // namespace baitwright
