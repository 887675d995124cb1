#pragma once

#include <cstdint>

namespace baitwright {

/// Of the draws behind a range, so that the same question has the same answer twice.
inline constexpr std::uint64_t usual_seed = 1;

}  // namespace baitwright
