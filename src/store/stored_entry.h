#pragma once

#include <cstdint>
#include <string>

#include "bait/entry_kind.h"
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
    std::string kind;  ///< one of `entry_kind_names`, or "feel"
    std::string name;
    std::string retired_on;  ///< ISO 8601 date
    std::string text;
};

/// A venue or a blend, which the store keeps as TOML text.
struct WrittenEntry {
    std::string name, text;
};

/// One that another refers to, or that refers to another.
struct NamedEntry {
    EntryKind kind;
    std::string name;
};

}  // namespace baitwright
