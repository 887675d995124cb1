#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "answers/money/pack_on_offer.h"
#include "answers/money/shop_needs.h"
#include "answers/shared/warning.h"

namespace baitwright {

/// What becomes of one ingredient over all sessions.
struct ShopLine {
    std::string name;
    Mass need, from_stock, bought;
    Mass left_over;  ///< after the last session, and what went past its best
    Mass past_best;  ///< of which past its best before that
    Keeping keeps;
};

/// A shop of the list with what is paid there.
struct ShopSum {
    std::string shop;  ///< empty: wherever it is sold
    Money packs;
    std::optional<Money> delivery;
};

/// What is to be got, and nobody is known to sell: it stands on the list with its amount, and the sum is without it.
struct NotOnSale {
    enum class Why { no_price, other_currency, not_sold_there };
    std::string name;
    Mass need;  ///< of all sessions
    Why why;
    Mass from_stock;
    Mass lacking;     ///< what the shed does not hold of the need
    int session = 0;  ///< the first that the shed does not reach for
};

/// The cheapest whole packs for all sessions, each bought as late as it can be; of those the ones that leave least
/// over.
struct ShopAnswer {
    std::vector<SessionNeed> sessions;     ///< by day
    std::vector<PackBought> packs;         ///< by shop, then by session
    std::vector<ShopSum> shops;            ///< those that something is bought at
    std::vector<ShopLine> lines;           ///< by name, those on sale
    std::vector<NotOnSale> missing;        ///< what the shed lacks and nobody sells
    std::optional<std::string> rather_at;  ///< the usual shop: what it sells is bought there; nothing where it has none
    const Currency* currency = nullptr;    ///< null where nothing has a price
    std::int64_t delivery_minor = 0, total_minor = 0;
    std::int64_t at_least_minor = 0;  ///< no whole packs cost less than that: the total, where all were weighed
    bool least_left = true;           ///< none that cost as much leave less over
    std::vector<Warning> warnings;

    /// By how much whole packs that were not tried may be cheaper, at the most; 0 where none are.
    [[nodiscard]] std::int64_t gap_minor() const { return total_minor - at_least_minor; }
    /// Whether the sum is of all that is needed.
    [[nodiscard]] bool complete() const { return missing.empty(); }
};

/// Needs are rounded to whole milligrams over the sessions together; an ingredient keeps from the day it is bought for
/// as long as it keeps dry, or cold, or frozen, whichever is known first. Throws InputError for more than
/// `most_delivering_shops` that deliver, "mixed-currencies" for one that asks for it in another currency than that of
/// the answer (`answer_currency`), and NotFound for a shop that sells nothing of what is
/// known of them; Error (answer_is_no) where no one shop sells it all, or no packs keep the most that may be left over.
ShopAnswer shop_sessions(std::vector<SessionNeed> sessions, const StockOnHand& stock, const ShopRequest& request);

}  // namespace baitwright
