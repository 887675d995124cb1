#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace baitwright {

/// What a library holds. The words stand in the store's tables.
enum class EntryKind { ingredient, mix, strategy, venue, blend };
inline constexpr std::array<std::string_view, 5> entry_kind_names{"ingredient", "mix", "strategy", "venue", "blend"};
constexpr std::string_view name_of(EntryKind kind) {
    return entry_kind_names[static_cast<std::size_t>(kind)];
}

}  // namespace baitwright
