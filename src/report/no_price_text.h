#pragma once

#include <cstddef>
#include <string>

namespace baitwright {

/// "1 thing has no price", "4 things have no price": why a sum is the least that it can be.
std::string no_price_text(std::size_t things);

}  // namespace baitwright
