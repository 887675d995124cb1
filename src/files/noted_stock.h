#pragma once

#include <optional>
#include <string>

#include "bait/stock.h"
#include "files/toml_reader.h"
#include "quantities/date.h"
#include "quantities/money.h"

namespace baitwright {

/// What came into the shed or went out of it, as it was written down away from the store. Its amount can only be read
/// once it is known of what it is.
struct NotedStock {
    std::string mark;  ///< the writer's own, by which it is known again; empty: by all that it says
    Date on;
    Happening what = Happening::used;  ///< bought, used, wasted or counted
    std::string of, amount;
    std::optional<Money> price;  ///< of a pack that was bought
    std::string shop;
    Position named_at, said_at;  ///< the places of its name and of its amount
};

/// All that a block headed [[stock]] holds, but its day; what else stands in it is a fault.
NotedStock read_noted_stock(TableReader& table);

}  // namespace baitwright
