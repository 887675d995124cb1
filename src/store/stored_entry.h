#pragma once

#include <cstdint>
#include <string>

#include "quantities/money.h"

namespace baitwright {

/// Where an entry came from: the program's own files, or the person.
enum class EntryOwner { shipped, person };

/// So many prices in use in one currency.
struct CurrencyCount {
    const Currency* currency = nullptr;
    std::int64_t prices = 0;
};

/// An entry that was replaced: kept as the TOML text it had.
struct RetiredEntry {
    std::string kind;  ///< "ingredient", "mix" or "strategy"
    std::string name;
    std::string retired_on;  ///< ISO 8601 date
    std::string text;
};

}  // namespace baitwright
