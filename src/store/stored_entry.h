#pragma once

#include <string>

namespace baitwright {

/// Where an entry came from: the program's own files, or the person.
enum class EntryOwner { shipped, person };

/// An entry that was replaced: kept as the TOML text it had.
struct RetiredEntry {
    std::string kind;  ///< "ingredient", "mix" or "strategy"
    std::string name;
    std::string retired_on;  ///< ISO 8601 date
    std::string text;
};

}  // namespace baitwright
