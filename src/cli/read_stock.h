#pragma once

#include <optional>
#include <string>

#include "bait/stock.h"
#include "cli/command.h"
#include "library/stock_name.h"
#include "quantities/date.h"

/// What the commands of the shed and of the prices read from their words and flags.
namespace baitwright {

/// The store, for a command whose subject is in it and nowhere else. Throws UsageError for `--library`.
Store store_of(const Surroundings& around);

/// The day of `--on`, or today. Throws UsageError where it has not come yet.
Date day_of(const Arguments& arguments, const Surroundings& around);

/// The day of `--best-before`. Throws UsageError where it lies before the day that the thing came.
std::optional<Date> best_before_of(const Arguments& arguments, Date got_on);

/// `--cold` or `--frozen`, or nothing.
std::optional<StockState> state_of(const Arguments& arguments);

/// The shop of `--shop` as the store writes it, said in all its words; empty where not given. One that no price was
/// ever told of must be announced by `--new-shop`, else it is taken for a slip.
std::string shop_of(const Arguments& arguments, const Store& store);

}  // namespace baitwright
