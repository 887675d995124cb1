#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "answers/shared/warning.h"
#include "bait/ingredient.h"
#include "bait/stock.h"

namespace baitwright {

/// What is in the shed on a day: by name, in the order in which a lot is first to be used.
struct ShedAnswer {
    Date today;
    std::vector<StockItem> items;
    std::size_t not_shown = 0;  ///< names beyond the most that were asked for
    std::vector<Warning> warnings;
};
ShedAnswer shed_answer(std::vector<StockItem> items, std::size_t not_shown, Date today);

/// Damp mix of a session, of which something comes home.
struct ComingHome {
    std::string mix;
    std::string feel;                            ///< that it was wetted to; empty where that is the mix's own
    Mass spare;                                  ///< what is left where all that was planned goes in
    StockState keeps_best = StockState::frozen;  ///< cold where frozen mix is in it, for none is frozen twice
};

/// An entry that was made, with what to mind about the lots that it touched.
struct StockChangeAnswer {
    StockReceipt receipt;
    std::vector<Warning> warnings;
    std::vector<ComingHome> coming_home = {};  ///< of a session
    std::optional<Pack> priced = {};           ///< of a purchase: the pack whose price was told with it
};
StockChangeAnswer stock_change_answer(StockReceipt receipt);

/// Names those of which something past its best is used or booked, and damp mixes that must not be frozen again.
std::vector<Warning> stock_warnings(const StockReceipt& receipt);

/// Names everything of which a lot is past its best on that day.
std::vector<Warning> past_best(const std::vector<StockItem>& items, Date today);

/// All that ever happened to one name.
struct StockHistory {
    std::string name;
    std::vector<StockEntry> entries;
};

}  // namespace baitwright
