#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "bait/advice_rule.h"
#include "bait/memory_shelf.h"
#include "bait/stock_on_hand.h"
#include "bait/venue.h"
#include "questions/arguments.h"

namespace baitwright {

/// What a page has open: the library it was given, the day, and what lay in the shed when it was made; on top of it
/// what the person told on the phone.
struct OpenedBank {
    MemoryShelf shelf;  ///< what the page carries
    std::vector<AdviceRule> advice;
    std::vector<Venue> venues;
    Date today, made_on;
    StockOnHand have;
    Usual usual;                         ///< what the person always uses
    std::optional<StockOnHand> in_shed;  ///< after what was told on the phone

    /// The library with the person's own on top: all questions are asked of it.
    [[nodiscard]] const Shelf& here() const;
    /// Where the person's own goes.
    MemoryShelf& own();
    /// From now on a pack of it costs that.
    void put_price(Ingredient ingredient, const Pack& told);
    /// As if nothing had been told on the phone.
    void forget_own();

    /// What the flags say is in the shed, else what is there.
    [[nodiscard]] StockOnHand stock(const Arguments& arguments) const;

private:
    std::unique_ptr<MemoryShelf> own_;
};

}  // namespace baitwright
