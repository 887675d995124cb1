#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

#include "files/position.h"

namespace baitwright {

/// Where the first byte stands that belongs to no letter of UTF-8 (RFC 3629: no surrogates, nothing overlong, nothing
/// above U+10FFFF); nothing where all is well.
std::optional<std::size_t> first_bad_byte(std::string_view text);

/// The place of a byte, its column counted in characters. A byte order mark takes no column.
Position place_of_byte(std::string_view text, std::size_t byte);

/// The text without a byte order mark in front.
std::string_view without_byte_order_mark(std::string_view text);

}  // namespace baitwright
