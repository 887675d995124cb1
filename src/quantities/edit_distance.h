#pragma once

#include <cstddef>
#include <string_view>

namespace baitwright {

/// The letters (code points) of a UTF-8 text; a byte that fits no letter counts as one.
std::size_t letter_count(std::string_view text);

/// How many single letters must be put in, left out, changed or swapped with their neighbour to make one word of the
/// other, where no stretch is changed twice (optimal string alignment).
std::size_t edit_distance(std::string_view a, std::string_view b);

}  // namespace baitwright
