#include "files/utf8.h"

#include <algorithm>
#include <array>

#include "quantities/edit_distance.h"

namespace baitwright {

namespace {

/// How a letter that begins with a byte from `first` to `last` goes on: so many bytes, the first of them in a range.
/// **Source**: RFC 3629, section 4 (from memory).
struct LetterForm {
    unsigned char first, last;
    unsigned char more;
    unsigned char second_low, second_high;
};
constexpr std::array<LetterForm, 9> letter_forms{{
    {0x00, 0x7F, 0, 0, 0},
    {0xC2, 0xDF, 1, 0x80, 0xBF},
    {0xE0, 0xE0, 2, 0xA0, 0xBF},
    {0xE1, 0xEC, 2, 0x80, 0xBF},
    {0xED, 0xED, 2, 0x80, 0x9F},
    {0xEE, 0xEF, 2, 0x80, 0xBF},
    {0xF0, 0xF0, 3, 0x90, 0xBF},
    {0xF1, 0xF3, 3, 0x80, 0xBF},
    {0xF4, 0xF4, 3, 0x80, 0x8F},
}};

unsigned char byte_at(std::string_view text, std::size_t at) {
    return static_cast<unsigned char>(text[at]);
}

/// The bytes of the letter at the front; 0 where there is none.
std::size_t letter_size(std::string_view text) {
    const unsigned char lead = byte_at(text, 0);
    for (const LetterForm& form : letter_forms) {
        if (lead < form.first || lead > form.last) continue;
        if (form.more == 0) return 1;
        if (text.size() <= form.more) return 0;
        if (byte_at(text, 1) < form.second_low || byte_at(text, 1) > form.second_high) return 0;
        for (std::size_t i = 2; i <= form.more; ++i)
            if ((byte_at(text, i) & 0xC0U) != 0x80U) return 0;
        return std::size_t{1} + form.more;
    }
    return 0;
}

}  // namespace

std::optional<std::size_t> first_bad_byte(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t size = letter_size(text.substr(at));
        if (size == 0) return at;
        at += size;
    }
    return std::nullopt;
}

Position place_of_byte(std::string_view text, std::size_t byte) {
    const std::string_view before = without_byte_order_mark(text.substr(0, byte));
    const auto line_end = before.rfind('\n');
    const auto line_start = line_end == std::string_view::npos ? 0 : line_end + 1;
    return {static_cast<int>(1 + std::count(before.begin(), before.end(), '\n')),
            static_cast<int>(1 + letter_count(before.substr(line_start)))};
}

std::string_view without_byte_order_mark(std::string_view text) {
    constexpr std::string_view mark = "\xEF\xBB\xBF";
    return text.substr(0, mark.size()) == mark ? text.substr(mark.size()) : text;
}

}  // namespace baitwright
