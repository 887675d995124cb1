#pragma once

#include <map>
#include <string>
#include <vector>

#include "answers/shared/stock_answer.h"
#include "bait/shelf.h"
#include "bait/stock_on_hand.h"
#include "questions/stock_amount.h"

namespace baitwright {

/// What a phone says happened in the shed.
struct ShedEntry {
    std::string what;  ///< "buy", "use", "waste" or "count"
    StockName of;
    Milligrams mass;
    Date on;
    std::optional<Money> paid = {};  ///< for all of it
    std::string shop = {};
};

/// The shed on a phone: what lay there when the page was made, and what happened since, by the rules of
/// `bait/stock_rules.h`. Its lots last as long as the page is open; the ledger is at home.
class PhoneShed {
public:
    /// Of what was there nobody knows here when it came: on the day that the page was made.
    PhoneShed(const Shelf& shelf, const StockOnHand& have, Date made_on);

    /// Throws Error "short-of-stock" where it takes more than there is; then nothing is changed.
    void enter(const ShedEntry& entry);

    [[nodiscard]] ShedAnswer answer(Date today) const;
    [[nodiscard]] StockOnHand stock() const;
    /// The names in it.
    [[nodiscard]] std::vector<std::string> names() const;

private:
    void add(const std::string& name, StockKind kind, Lot lot);
    void take(const ShedEntry& entry);
    void count(const ShedEntry& entry);
    void move(StockItem& item, const std::vector<Movement>& movements, Date opened_on, bool opens);
    StockItem& item_of(const std::string& name, StockKind kind);

    std::map<std::string, StockItem> items_;   // by folded name
    std::map<std::int64_t, Milligrams> came_;  // what a lot held, for its price
    std::int64_t last_lot_ = 0;
};

}  // namespace baitwright
