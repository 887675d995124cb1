#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

namespace baitwright {

/// Sixteen hexadecimal digits that are others where any of the texts is another: FNV-1a, 64 bits, over all of them.
/// **Source**: Fowler, Noll, Vo, "The FNV Non-Cryptographic Hash Algorithm" (IETF draft), from memory.
std::string digest_of(std::initializer_list<std::string_view> texts);

}  // namespace baitwright
