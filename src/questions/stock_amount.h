#pragma once

#include <optional>
#include <string>
#include <variant>

#include "bait/ingredient.h"
#include "bait/stock.h"

/// Amounts of what is in the shed, as a person says them.
namespace baitwright {

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
/// The mass of an amount of it, above zero. A made-up mix is weighed: its amount must be a mass.
Milligrams read_stock_mass(const std::string& text, const StockName& of);
/// The same for a count, which may find nothing: "0g", "none".
Milligrams read_counted_mass(const std::string& text, const StockName& of);

}  // namespace baitwright
