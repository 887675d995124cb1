#include "page/page_letters.h"

#include <zlib.h>

#include <cstdint>
#include <stdexcept>

namespace baitwright {

namespace {

constexpr std::uint32_t letters_used = 91, bits_of_two = 13, bits_of_one = 6;

/// Those from ! to ~ in their order, without < @ and the backslash.
char letter_of(std::uint32_t value) {
    auto code = static_cast<char>('!' + value);
    for (const char left_out : {'<', '@', '\\'})
        if (code >= left_out) ++code;
    return code;
}

}  // namespace

std::string page_letters(std::string_view bytes) {
    std::string letters;
    letters.reserve(bytes.size() * 16 / bits_of_two + 2);
    std::uint32_t held = 0, bits = 0;
    const auto put_two = [&] {
        const std::uint32_t value = held & ((1U << bits_of_two) - 1);
        letters += letter_of(value % letters_used);
        letters += letter_of(value / letters_used);
    };
    for (const char byte : bytes) {
        held |= static_cast<std::uint32_t>(static_cast<unsigned char>(byte)) << bits;
        bits += 8;
        if (bits < bits_of_two) continue;
        put_two();
        held >>= bits_of_two;
        bits -= bits_of_two;
    }
    if (bits > bits_of_one)
        put_two();
    else if (bits > 0)
        letters += letter_of(held);
    return letters;
}

std::string packed_letters(std::string_view text) {
    uLongf size = compressBound(static_cast<uLong>(text.size()));
    std::string packed(size, '\0');
    const int result =
        compress2(reinterpret_cast<Bytef*>(packed.data()), &size, reinterpret_cast<const Bytef*>(text.data()),
                  static_cast<uLong>(text.size()), Z_BEST_COMPRESSION);
    if (result != Z_OK) throw std::logic_error("a page's data could not be packed");
    packed.resize(size);
    return page_letters(packed);
}

}  // namespace baitwright
