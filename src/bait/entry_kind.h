#pragma once

#include <array>
#include <cstddef>
#include <string>
#include <string_view>

namespace baitwright {

/// What a library holds. The words stand in the store's tables.
enum class EntryKind { ingredient, mix, strategy, venue, blend };
inline constexpr std::array<std::string_view, 5> entry_kind_names{"ingredient", "mix", "strategy", "venue", "blend"};
constexpr std::string_view name_of(EntryKind kind) {
    return entry_kind_names[static_cast<std::size_t>(kind)];
}

/// The first word of its commands: "recipe" for a mix, else its name.
inline std::string command_word(EntryKind kind) {
    return kind == EntryKind::mix ? "recipe" : std::string(name_of(kind));
}

}  // namespace baitwright
