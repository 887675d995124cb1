#pragma once

#include <regex>
#include <string>
#include <vector>

namespace baitwright::reference {

/// The numbers of a row's text in the order they stand, without signs: "10 % -> 16.5 % wb" gives 10 and 16.5; a hyphen
/// between two of them is a range.
inline std::vector<double> numbers_in(const std::string& text) {
    static const std::regex number(R"(\d+(\.\d+)?([eE]-?\d+)?)");
    std::vector<double> numbers;
    for (std::sregex_iterator at(text.begin(), text.end(), number), end; at != end; ++at)
        numbers.push_back(std::stod(at->str()));
    return numbers;
}

}  // namespace baitwright::reference
