#pragma once

#include <optional>
#include <string>
#include <vector>

#include "bait/advice_rule.h"
#include "bait/shelf.h"
#include "bait/stock_on_hand.h"
#include "bait/strategy.h"
#include "bait/usual.h"
#include "report/json.h"

namespace baitwright {

/// A strategy that a page is to carry, with the shelf on which it is complete.
struct CarriedStrategy {
    const Shelf* shelf;
    Strategy strategy;
};

/// What goes into a page beside the engine.
struct BankContents {
    std::vector<CarriedStrategy> strategies;
    const Shelf* library;  ///< for the mixes and pellets beyond the strategies'
    StockOnHand stock;
    Date made_on;
    std::string version;       ///< of the program
    std::optional<int> start;  ///< minutes since midnight
    int people = 1;
    const Currency* usual_currency = nullptr;  ///< what the person always uses; may be null
    std::vector<AdviceRule> advice;            ///< the rules of advice
    Usual always;                              ///< the same of pump, vessel, water and units, as it was told once
};

/// {id, version, made_on, start, people, strategies: [name], have: ["brown crumb=400 g"], usual, currency, units,
/// always, library, more, contents, known}: `usual` is TOML with the ingredients that measured ones took the place of,
/// `library` is TOML with all that the strategies need, `currency` the code of the one that the person always uses or
/// null, `units` "metric", "imperial", "both" or empty, `always` the {pump, vessel, water_temp} that the fields begin
/// with, each with its unit or null, `more` with the other mixes, what is in them, and the other pellets. `id` is
/// another where anything that is worked out from would be another. `advice` is that of `advice_data`, `learnt` that of
/// `learnt_data`, and not there where nothing was learnt. `contents` is what `Bank` replies to `open`, `known` its
/// replies to what a phone asks first:
/// [{asked, reply}]. Throws UsageError "two-meanings" where two strategies mean different things by a name.
Json bank_data(const BankContents& contents);

}  // namespace baitwright
