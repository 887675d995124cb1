#pragma once

#include <optional>
#include <string>
#include <variant>

#include "bait/stock.h"
#include "cli/command.h"
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

/// Packs of one size: "2x5kg"; "2 packs", where the ingredient comes in one size only; "400 g" and "2 pt" are one pack.
struct Packs {
    std::variant<Mass, Volume> size;
    double count = 1;
};
Packs read_packs(const std::string& text, const Ingredient& ingredient);

/// A name in the shed, or in the library, which the shed may come to hold.
struct StockName {
    std::string name;
    StockKind kind = StockKind::ingredient;
    std::optional<Ingredient> ingredient;  ///< nothing for a mix
};
/// Throws NotFound.
StockName stock_name(const std::string& word, Store& store);
/// Whether a word names something of the kind.
bool is_stock_name(const std::string& word, Store& store);

/// The mass of an amount of it, above zero. A made-up mix is weighed: its amount must be a mass.
Milligrams read_stock_mass(const std::string& text, const StockName& of);
/// The same for a count, which may find nothing: "0g", "none".
Milligrams read_counted_mass(const std::string& text, const StockName& of);

}  // namespace baitwright
