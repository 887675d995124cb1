#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>

namespace baitwright {

inline constexpr std::size_t bytes_of_number = 8;

/// The bits as they lie where the lowest byte comes first.
inline std::uint64_t turned_little(std::uint64_t bits) {
    if constexpr (std::endian::native == std::endian::big) return __builtin_bswap64(bits);
    return bits;
}

}  // namespace baitwright
