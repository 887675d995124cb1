#pragma once

#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

namespace baitwright::fuzz {

/// Feeds the bytes to what says which promise they broke, and ends the process where they broke one.
template <class Check>
int judge(const std::uint8_t* data, std::size_t size, Check&& check) {
    const std::string broken = check(std::string_view(reinterpret_cast<const char*>(data), size));
    if (broken.empty()) return 0;
    std::fprintf(stderr, "%s\n", broken.c_str());
    std::abort();
}

}  // namespace baitwright::fuzz
