#pragma once

#include <array>
#include <string>
#include <string_view>

namespace baitwright {

/// What a library holds. The words stand in the tables.
enum class EntryKind { ingredient, mix, strategy, venue, blend };
inline constexpr std::array<std::string_view, 5> entry_kind_names{"ingredient", "mix", "strategy", "venue", "blend"};
constexpr std::string_view name_of(EntryKind kind) {
    return entry_kind_names[static_cast<std::size_t>(kind)];
}

/// Where an entry came from: the program's own files, or the person.
enum class EntryOwner { shipped, person };

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
