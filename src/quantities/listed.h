#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace baitwright {

/// "a", "a and b", "a, b and c".
std::string listed(const std::vector<std::string>& words);

/// One after the other, with the separator between.
template <class Words>
std::string joined(const Words& words, std::string_view separator) {
    std::string text;
    for (const auto& word : words) {
        if (!text.empty()) text += separator;
        text += word;
    }
    return text;
}

}  // namespace baitwright
