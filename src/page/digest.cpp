#include "page/digest.h"

#include <fmt/format.h>

#include <cstdint>

namespace baitwright {

std::string digest_of(std::initializer_list<std::string_view> texts) {
    std::uint64_t hash = 0xcbf29ce484222325u;
    for (const std::string_view text : texts)
        for (const char letter : text) hash = (hash ^ static_cast<unsigned char>(letter)) * 0x100000001b3u;
    return fmt::format("{:016x}", hash);
}

}  // namespace baitwright
