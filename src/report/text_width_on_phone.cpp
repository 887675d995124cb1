#include "report/degree_sign.h"
#include "report/text_table.h"

namespace baitwright {

/// A phone lays words out by itself and needs widths only to tell a long source from a short one: each letter counts as
/// one, and the large table of the letters' widths does not go into the page.
std::size_t text_width(std::string_view text) {
    std::size_t letters = 0;
    for (const char byte : text)
        if ((static_cast<unsigned char>(byte) & 0xc0u) != 0x80u) ++letters;
    return letters;
}

/// A phone shows every letter.
std::string in_plain_letters(std::string_view text) {
    return std::string(text);
}

}  // namespace baitwright
