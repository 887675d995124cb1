#pragma once

#include <string>

#include "bait/memory_shelf.h"
#include "bait/stock_on_hand.h"
#include "questions/arguments.h"
#include "report/json.h"

namespace baitwright {

/// What a page has open: the library it was given, the day, and what lay in the shed when it was made.
struct OpenedBank {
    MemoryShelf shelf;
    Date today;
    StockOnHand have;
    Usual usual;  ///< what the person always uses

    /// What the flags say is in the shed, else what was there.
    [[nodiscard]] StockOnHand stock(const Arguments& arguments) const;
};

/// Which forms of an answer a request wants.
struct Wanted {
    bool told = false, json = false, picture = false;
    bool narrow = false;  ///< the picture for a phone held upright
};
Wanted wanted_of(const Json& request);

/// The reply to one of the questions of `Bank`. Throws the project's errors; NotFound for a question that is none of
/// them.
Json answer_of(const OpenedBank& bank, const std::string& question, const Arguments& arguments, const Wanted& wanted);

}  // namespace baitwright
