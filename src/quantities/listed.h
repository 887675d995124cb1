#pragma once

#include <string>
#include <vector>

namespace baitwright {

/// "a", "a and b", "a, b and c".
std::string listed(const std::vector<std::string>& words);

}  // namespace baitwright
